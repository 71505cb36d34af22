using Staging.Core.Solving;

namespace Staging.Core.Validation.Exact;

/// <summary>Runs at the default options against closed forms.</summary>
public class SolvingClosedFormChecks
{
    private const double G = 9.80665;

    private static readonly Provenance Vacuum = new()
    {
        Source = "Vertical throw in vacuum, any textbook of mechanics",
        Locator = "t = 2 v/g, h = v^2/(2 g)",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Drag = new()
    {
        Source = "Vertical throw with drag proportional to the square of the speed, any textbook of mechanics",
        Locator = "terminal speed w: t = (w/g) arctan(v/w), h = w^2/(2 g) ln(1 + v^2/w^2), landing speed v/sqrt(1 + v^2/w^2)",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Tolerance OneNanosecond = Tolerance.FixedAmount(2e-9, "event tolerance of 1 ns and round-off of the run");

    [Fact]
    public void A_throw_in_vacuum_lands_on_time()
    {
        const double V = 30;
        (FiredEvent top, double height, double landing, _) = Throw(V, terminal: 0);
        SolvingCheck.Verify("Throw at 30 m/s in vacuum, time of the top", "s", V / G, top.Time, OneNanosecond, Vacuum);
        SolvingCheck.Verify("Throw at 30 m/s in vacuum, height of the top", "m", V * V / (2 * G), height, Tolerance.ClosedForm, Vacuum);
        SolvingCheck.Verify("Throw at 30 m/s in vacuum, time of landing", "s", 2 * V / G, landing, OneNanosecond, Vacuum);
    }

    [Fact]
    public void A_throw_with_drag_turns_and_lands_as_in_closed_form()
    {
        const double V = 60, W = 25;
        (FiredEvent top, double height, _, double landingSpeed) = Throw(V, W);
        Tolerance within = Tolerance.Relative(2e-8, "relative tolerance 1e-8 of the run");
        SolvingCheck.Verify("Throw at 60 m/s, terminal 25 m/s, time of the top", "s", W / G * Math.Atan(V / W), top.Time, within, Drag);
        SolvingCheck.Verify("Throw at 60 m/s, terminal 25 m/s, height of the top", "m", W * W / (2 * G) * Math.Log(1 + V * V / (W * W)), height, within, Drag);
        SolvingCheck.Verify("Throw at 60 m/s, terminal 25 m/s, landing speed", "m/s", V / Math.Sqrt(1 + V * V / (W * W)), landingSpeed, within, Drag);
    }

    private static (FiredEvent Top, double Height, double Landing, double LandingSpeed) Throw(double speed, double terminal)
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [10.0, 10.0]);
        integrator.State[1] = speed;
        var system = new ThrownBody(terminal);
        var track = new DenseTrack(2, Tsitouras54.DenseDegree);
        Assert.Equal(PhaseEnd.Event, integrator.Run(ref system, 100, track, TestContext.Current.CancellationToken));
        FiredEvent top = integrator.Fired[0];
        Span<double> y = stackalloc double[2];
        track.At(top.Time, y);
        return (top, y[0], integrator.Time, -integrator.State[1]);
    }

    /// <summary>Height and speed of a thrown body; event 0 is the top, event 1 the landing, which ends the phase. Terminal speed zero is vacuum.</summary>
    private readonly struct ThrownBody(double terminal) : IOdeSystem
    {
        public int Dimension => 2;

        public int EventCount => 2;

        public EventRule Rule(int index) => new(Crossing.Falling, EndsPhase: index == 1);

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            dydt[0] = y[1];
            dydt[1] = -G - (terminal > 0 ? G * y[1] * Math.Abs(y[1]) / (terminal * terminal) : 0);
        }

        public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
        {
            values[0] = y[1];
            values[1] = y[0];
        }
    }
}
