using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(2) A root is located in time, never by function value, and the state is taken just past it.</summary>
public class Rule2LocationTests
{
    private const double Root = 0.3217;

    public static TheoryData<string> Shapes => ["plain", "steep", "faint", "flat", "step", "pole", "saturated"];

    private static Func<double, double> Shape(string name) => name switch
    {
        "plain" => t => t - Root,
        "steep" => t => 1e12 * (t - Root),
        "faint" => t => 1e-12 * (t - Root),
        "flat" => t => Math.Pow(t - Root, 9),
        "step" => t => t < Root ? -1 : 1,
        "pole" => t => 1 / (t - Root),
        _ => t => Math.Tanh(1e7 * (t - Root)),
    };

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Located_within_the_time_tolerance_and_not_before_the_root(string shape)
    {
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (Shape(shape), Watching.Note)));
        Assert.InRange(fired.Time, Root - 1e-15, Root + Watching.Tolerance);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_state_of_an_ending_event_is_just_past_the_root(string shape)
    {
        Func<double, double> f = Shape(shape);
        var system = new TimeFunctions((f, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 1));
        Assert.True(f(0) * f(integrator.Time) <= 0);
        Assert.Equal(integrator.Time, integrator.State[0], 15);
    }

    [Fact]
    public void A_finer_tolerance_locates_finer()
    {
        foreach (double tolerance in new[] { 1e-3, 1e-6, 1e-9, 1e-12 })
        {
            var options = SolverOptions.Default with { EventTimeTolerance = UnitsNet.Duration.FromSeconds(tolerance) };
            var system = new TimeFunctions((t => Math.Exp(t) - Math.Exp(Root), Watching.End));
            var integrator = new Integrator<Tsitouras54>(options, [1.0]);
            integrator.Go(ref system, 1);
            Assert.InRange(integrator.Time - Root, -1e-15, tolerance);
        }
    }
}
