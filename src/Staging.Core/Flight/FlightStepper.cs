using System.Globalization;
using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// The integrator of <see cref="Integrator{TMethod}"/>, written out for height and velocity: the same Tsitouras pair, step control and contract of events,
/// with its two states in registers. It exists for speed alone; a test holds it to the general one.
/// </summary>
internal sealed class FlightStepper(SolverOptions options, double heightScale, double velocityScale)
{
    private const double Safety = 0.9;
    private const double MostGrowth = 6;
    private const double MostShrink = 0.2;
    private const double ShrinkWhenNotFinite = 0.1;

    /// <summary>Exponents of the proportional-integral control (K. Gustafsson, ACM TOMS 17 (1991) 533-554) over the order 5.</summary>
    private const double Proportional = 0.7 / 5, Integral = 0.4 / 5;

    private readonly double relative = options.RelativeTolerance;
    private readonly double absoluteHeight = options.ScaledAbsoluteTolerance * heightScale;
    private readonly double absoluteVelocity = options.ScaledAbsoluteTolerance * velocityScale;
    private readonly double longest = options.LongestStep.Seconds;
    private readonly double eventWidth = options.EventTimeTolerance.Seconds;
    private FlightStep step;
    private double suggested;
    private double lastLogError = Math.Log(1.0);
    private int accepted, rejected, calls, eventCalls;

    public double Time { get; set; }

    public double Height { get; set; }

    public double Velocity { get; set; }

    /// <summary>Index of the event that ended the last piece.</summary>
    public int Fired { get; private set; }

    public SolverFailure? Failure { get; private set; }

    public SolverStatistics Statistics => new SolverStatistics() with
    {
        AcceptedSteps = accepted,
        RejectedSteps = rejected,
        DerivativeCalls = calls,
        EventCalls = eventCalls,
    };

    /// <summary>Flies one piece from <see cref="Time"/> to <paramref name="stop"/> [s] or to the first event.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public PhaseEnd Run(ref TrajectorySystem system, double stop, BodyLog log, CancellationToken cancel)
    {
        Failure = null;
        if (!(stop > Time))
            return PhaseEnd.StopTime;
        step.Start(Time, Height, Velocity, ref system);
        calls++;
        if (!double.IsFinite(step.A1))
            return Fail(SolverFailureKind.NonFiniteState);
        if (suggested <= 0)
            suggested = FirstStep(ref system, stop - Time);
        (double First, double Second) before = system.Events(Time, Height, Velocity);
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            if (!TryStep(ref system, stop, out bool atStop))
                return PhaseEnd.Failed;
            double end = atStop ? stop : Time + step.H;
            (double First, double Second) after = system.Events(end, step.HeightEnd, step.VelocityEnd);
            eventCalls++;
            if (Met(ref system, before, after, end) is { } met)
            {
                (double h, double v) = step.At(met);
                log.Take(ref step, ref system, met - Time);
                (Time, Height, Velocity) = (met, h, v);
                return PhaseEnd.Event;
            }

            log.Take(ref step, ref system, step.H);
            (Time, Height, Velocity) = (end, step.HeightEnd, step.VelocityEnd);
            if (atStop)
                return PhaseEnd.StopTime;
            step.Continue(end);
            before = after;
        }
    }

    private bool TryStep(ref TrajectorySystem system, double stop, out bool atStop)
    {
        bool repeated = false;
        while (true)
        {
            double remaining = stop - Time;
            double h = Math.Min(suggested, longest);
            // A last step is stretched by up to one per cent, or two are evened out, so that no sliver is left over.
            atStop = h >= remaining * 0.99;
            if (atStop)
                h = remaining;
            else if (h > 0.5 * remaining)
                h = 0.5 * remaining;
            if (Time + h <= Time || accepted + rejected >= options.MostSteps)
            {
                Fail(Time + h <= Time ? SolverFailureKind.StepTooSmall : SolverFailureKind.TooManySteps);
                return false;
            }

            step.Advance(ref system, h);
            calls += FlightStep.NewCalls;
            double e = ErrorNorm();
            if (e <= 1)
            {
                double logError = Math.Log(Math.Max(e, 1e-10));
                double growth = Safety * Math.Exp(Integral * lastLogError - Proportional * logError);
                growth = Math.Clamp(growth, MostShrink, repeated ? 1 : MostGrowth);
                suggested = Math.Max(h * growth, atStop ? suggested : 0);
                lastLogError = Math.Max(logError, LogLeastError);
                accepted++;
                return true;
            }

            rejected++;
            repeated = true;
            suggested = double.IsFinite(e) ? h * Math.Max(MostShrink, Safety * Math.Pow(e, -0.2)) : h * ShrinkWhenNotFinite;
        }
    }

    /// <summary>Logarithm of the least error that the control remembers, 1e-4.</summary>
    private static readonly double LogLeastError = Math.Log(1e-4);

    /// <summary>Root mean square of the local errors over their tolerances; infinite when anything is not finite.</summary>
    private double ErrorNorm()
    {
        double eh = step.HeightError / (absoluteHeight + relative * Math.Max(Math.Abs(step.Height0), Math.Abs(step.HeightEnd)));
        double ev = step.VelocityError / (absoluteVelocity + relative * Math.Max(Math.Abs(step.Velocity0), Math.Abs(step.VelocityEnd)));
        double norm = Math.Sqrt(0.5 * (eh * eh + ev * ev));
        return double.IsFinite(norm) && double.IsFinite(step.HeightEnd) && double.IsFinite(step.VelocityEnd) ? norm : double.PositiveInfinity;
    }

    /// <summary>A first step from the sizes of state, slope and curvature (Hairer, Norsett and Wanner 1993, section II.4).</summary>
    private double FirstStep(ref TrajectorySystem system, double remaining)
    {
        double sh = absoluteHeight + relative * Math.Abs(Height), sv = absoluteVelocity + relative * Math.Abs(Velocity);
        double d0 = Norm(Height / sh, Velocity / sv), d1 = Norm(step.Rise * Velocity / sh, step.A1 / sv);
        double h0 = Math.Min(d0 < 1e-5 || d1 < 1e-5 ? 1e-6 * remaining : 0.01 * d0 / d1, remaining);
        double a = system.Acceleration(Time + h0, Height + h0 * step.Rise * Velocity, Velocity + h0 * step.A1);
        calls++;
        double d2 = Norm(step.Rise * step.A1 / sh, (a - step.A1) / h0 / sv);
        double largest = Math.Max(d1, d2);
        double h1 = double.IsFinite(largest) && largest > 1e-15 ? Math.Pow(0.01 / largest, 0.2) : 1e-3 * h0;
        return Math.Min(Math.Min(100 * h0, h1), remaining);
    }

    private static double Norm(double a, double b) => Math.Sqrt(0.5 * (a * a + b * b));

    /// <summary>The time of the first event of a step, or null. Between its ends a step is scanned only where a crossing is within reach.</summary>
    private double? Met(ref TrajectorySystem system, (double First, double Second) before, (double First, double Second) after, double end)
    {
        (double reachFirst, double reachSecond) = system.Reach(step.H, step.FastestStage, step.HardestStage);
        bool near = Math.Min(Math.Abs(before.First), Math.Abs(after.First)) <= reachFirst
            || Math.Min(Math.Abs(before.Second), Math.Abs(after.Second)) <= reachSecond
            || before.First > 0 != after.First > 0 || before.Second > 0 != after.Second > 0;
        if (!near)
            return null;
        int parts = options.EventScanParts;
        double from = Time;
        for (int part = 1; part <= parts; part++)
        {
            double to = part == parts ? end : Time + step.H * part / parts;
            (double First, double Second) then = after;
            if (part < parts)
            {
                (double h, double v) = step.At(to);
                then = system.Events(to, h, v);
                eventCalls++;
            }

            bool first = system.Meets(0, before.First, then.First), second = system.Meets(1, before.Second, then.Second);
            if (first || second)
            {
                double t0 = first ? Locate(ref system, 0, from, before.First, to, then.First) : double.PositiveInfinity;
                double t1 = second ? Locate(ref system, 1, from, before.Second, to, then.Second) : double.PositiveInfinity;
                Fired = t0 <= t1 ? 0 : 1;
                return Math.Min(t0, t1);
            }

            before = then;
            from = to;
        }

        return null;
    }

    private double Locate(ref TrajectorySystem system, int index, double from, double before, double to, double after)
    {
        var function = new EventOnStep(ref system, ref step, index);
        (_, double time) = BracketedRoot.Shrink(ref function, from, before, to, after, eventWidth);
        eventCalls += function.Calls;
        return time;
    }

    private PhaseEnd Fail(SolverFailureKind kind)
    {
        string message = kind switch
        {
            SolverFailureKind.StepTooSmall => "The step fell below the spacing of times",
            SolverFailureKind.TooManySteps => string.Create(CultureInfo.InvariantCulture, $"{options.MostSteps} steps were used up"),
            _ => "A state or a derivative was not finite",
        };
        Failure = FlightLifting.Failure(kind, Time, string.Create(CultureInfo.InvariantCulture, $"{message} at {Time:G9} s."));
        return PhaseEnd.Failed;
    }

    private ref struct EventOnStep : IScalarFunction
    {
        private readonly ref TrajectorySystem system;
        private readonly ref FlightStep step;
        private readonly int index;

        public EventOnStep(ref TrajectorySystem system, ref FlightStep step, int index)
        {
            this.system = ref system;
            this.step = ref step;
            this.index = index;
        }

        public int Calls { get; private set; }

        public double At(double x)
        {
            (double h, double v) = step.At(x);
            (double first, double second) = system.Events(x, h, v);
            Calls++;
            return index == 0 ? first : second;
        }
    }
}
