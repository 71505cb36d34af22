using Staging.Core.Solving;

namespace Staging.Core.Flight;

/// <summary>
/// <see cref="Integrator{TMethod}"/> with the Tsitouras pair, written out for height and velocity: its two states stay
/// in registers, and a step on which no event can fall is not scanned. Step control, first step, and event scan are
/// those of the general integrator, so its event contract holds here too. It exists for speed alone, nearly three
/// times that of the general one (see the benchmarks); tests hold it to the same steps and events, bit for bit.
/// </summary>
internal sealed class FlightStepper
{
    /// <summary>The last step is stretched by up to this fraction, as in the general integrator.</summary>
    private const double Stretch = 0.01;

    /// <summary>Smallest step, in roundings of the time or of the longest step; as in the general integrator.</summary>
    private const double SmallestStep = 4 * 2.2204460492503131e-16;

    /// <summary>
    /// Share by which the first slope of a phase may differ from the last of the phase before without a new first step;
    /// as in the general integrator.
    /// </summary>
    private const double SlopeJump = 0.1;

    /// <summary>
    /// Greatest relative change of the speed of sound a metre that the search for corners of the drag table allows for
    /// [1/m]: six kelvin in ten metres.
    /// </summary>
    private const double SoundSlope = 1e-3;

    private readonly SolverOptions options;
    private readonly ErrorScale scale;
    private readonly EventScan events;
    private readonly double relative, absoluteHeight, absoluteVelocity, longest;
    private readonly double[] state = new double[2];
    private readonly double[] next = new double[2];
    private readonly double[] slope = new double[2];
    private readonly double[] probe = new double[2];
    private readonly double[] probeSlope = new double[2];
    private readonly double[] dense = new double[2 * Tsitouras54.DenseDegree];
    private FlightStep step;
    private StepControl control = new(Tsitouras54.Order, Tsitouras54.ErrorMemory);
    private SolverWork eventWork;
    private double lastClimb, lastAcceleration;
    private int accepted, rejected, calls;

    /// <summary>Prepares an integration.</summary>
    public FlightStepper(SolverOptions options, double heightScale, double velocityScale)
    {
        (this.options, Budget) = (options, new StepBudget(options.MaxSteps));
        scale = new ErrorScale(options, [heightScale, velocityScale]);
        events = new EventScan(options, 2);
        absoluteHeight = options.ScaledAbsoluteTolerance * heightScale;
        absoluteVelocity = options.ScaledAbsoluteTolerance * velocityScale;
        (relative, longest) = (options.RelativeTolerance, options.LongestStep.Seconds);
    }

    public double Time { get; set; }

    public double Height { get; set; }

    public double Velocity { get; set; }

    /// <summary>Events that ended the last segment, or happened with its end; in the order of their indices.</summary>
    public ReadOnlySpan<FiredEvent> Fired => events.Fired;

    public SolverFailure? Failure { get; private set; }

    /// <summary>The steps that the run may still take.</summary>
    public StepBudget Budget { get; }

    public SolverWork Statistics => new(accepted, rejected, calls, eventWork.EventCalls);

    /// <summary>Flies from <see cref="Time"/> to <paramref name="stop"/> [s] or to the first event.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public PhaseEnd Run(ref TrajectorySystem system, double stop, BodyRecorder log, CancellationToken cancel)
    {
        Failure = null;
        events.Clear();
        if (!(stop > Time))
            return PhaseEnd.StopTime;
        if (!BeginPhase(ref system, stop))
            return PhaseEnd.Failed;
        bool sidesKnown = false;
        while (true)
        {
            if (!TryStep(ref system, stop, cancel, out bool atStop))
                return PhaseEnd.Failed;
            double end = atStop ? stop : Time + step.H, ending = double.NaN;
            bool near = MayMeet(ref system);
            if (near)
            {
                ending = Scan(ref system, end, atStop, sidesKnown);
                if (!double.IsNaN(events.UndefinedAt))
                    return FailUndefined();
            }

            sidesKnown = near;
            if (!double.IsNaN(ending) && ending < end)
            {
                (double h, double v) = step.At(ending);
                (lastClimb, lastAcceleration) = step.SlopeAt(ending);
                log.Take(ref step, ref system, ending - Time);
                (Time, Height, Velocity) = (ending, h, v);
                return PhaseEnd.Event;
            }

            log.Take(ref step, ref system, step.H);
            (Time, Height, Velocity) = (end, step.HeightEnd, step.VelocityEnd);
            if (atStop || !double.IsNaN(ending))
            {
                (lastClimb, lastAcceleration) = (system.Rise * Velocity, step.AEnd);
                return double.IsNaN(ending) ? PhaseEnd.StopTime : PhaseEnd.Event;
            }

            step.Continue(end);
        }
    }

    /// <summary>Evaluates the slope, and chooses a first step unless the motion continues smoothly.</summary>
    private bool BeginPhase(ref TrajectorySystem system, double stop)
    {
        step.Start(Time, Height, Velocity, ref system);
        calls++;
        double climb = system.Rise * Velocity;
        if (!double.IsFinite(Height) || !double.IsFinite(climb) || !double.IsFinite(step.A1))
            return Fail(SolverFailureKind.NonFiniteState, Time,
                Invariant.Text($"Height, velocity or acceleration is not finite at the start of a phase, at {Time:G9} s."));
        if (!(control.Suggested > 0) || Jumps(climb, step.A1))
        {
            (state[0], state[1], slope[0], slope[1]) = (Height, Velocity, climb, step.A1);
            control.Restart(FirstStep.Estimate(ref system, scale, Tsitouras54.Order, Time, state, slope, stop, longest, probe, probeSlope));
            calls++;
        }

        return true;
    }

    /// <summary>
    /// Whether the slope differs from the last of the phase before by more than the share that goes on without a new
    /// first step.
    /// </summary>
    private bool Jumps(double climb, double acceleration)
    {
        double toleratedHeight = absoluteHeight + relative * Math.Abs(Height),
            toleratedVelocity = absoluteVelocity + relative * Math.Abs(Velocity);
        double jump = Square((climb - lastClimb) / toleratedHeight) + Square((acceleration - lastAcceleration) / toleratedVelocity);
        double last = Square(lastClimb / toleratedHeight) + Square(lastAcceleration / toleratedVelocity);
        return !(jump <= SlopeJump * SlopeJump * last);
    }

    private static double Square(double x) => x * x;

    private bool TryStep(ref TrajectorySystem system, double stop, CancellationToken cancel, out bool atStop)
    {
        bool repeated = false;
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            double remaining = stop - Time, h = Math.Min(control.Suggested, longest);
            atStop = h >= remaining * (1 - Stretch);
            if (atStop)
                h = Time + remaining > stop ? Math.BitDecrement(remaining) : remaining;
            else if (h > 0.5 * remaining)
                h = 0.5 * remaining;
            if (!atStop && h < SmallestStep * Math.Max(Math.Abs(Time), Math.Min(remaining, longest)))
                return Stuck();
            if (Budget.IsSpent)
                return Fail(SolverFailureKind.TooManySteps, Time, Invariant.Text($"{options.MaxSteps} steps were used up at {Time:G9} s."));
            Budget.Take();
            step.Advance(ref system, h);
            calls += FlightStep.NewCalls;
            double e = ErrorSquare();
            if (e <= 1)
            {
                control.Accept(h, e, repeated);
                accepted++;
                return true;
            }

            rejected++;
            control.Reject(h, e);
            repeated = true;
        }
    }

    /// <summary>
    /// Mean square of the local errors over their tolerances; infinite when anything is not finite. As
    /// <see cref="ErrorScale.ErrorSquare"/>.
    /// </summary>
    private double ErrorSquare()
    {
        double eh = step.HeightError / (absoluteHeight + relative * double.MaxNative(Math.Abs(step.Height0), Math.Abs(step.HeightEnd)));
        double ev = step.VelocityError / (absoluteVelocity
            + relative * double.MaxNative(Math.Abs(step.Velocity0), Math.Abs(step.VelocityEnd)));
        double square = (eh * eh + ev * ev) / 2;
        return double.IsFinite(square) && double.IsFinite(step.HeightEnd) && double.IsFinite(step.VelocityEnd)
            ? square
            : double.PositiveInfinity;
    }

    /// <summary>
    /// Whether an event function can be zero anywhere on the step. The dense output of a step is y0 + h sum b_i(s) k_i
    /// with sum b_i(s) = s, so it stays within h (|k_1| + sum B_i |k_i - k_1|) of its start, B_i the largest |b_i(s)|;
    /// where that is not enough, the hull of its Bernstein coefficients decides.
    /// </summary>
    private bool MayMeet(ref TrajectorySystem system)
    {
        (double height, double velocity) = step.Reach();
        return MayMeet(ref system, step.Height0 - height, step.Height0 + height, step.Velocity0 - velocity, step.Velocity0 + velocity)
            && step.Hull() is var hull && MayMeet(ref system, hull.LowestHeight, hull.HighestHeight, hull.Slowest, hull.Fastest);
    }

    private static bool MayMeet(ref TrajectorySystem system, double lowest, double highest, double slowest, double fastest)
    {
        double perSound = system.LastReciprocalSound, change = SoundSlope * (highest - lowest);
        double max = Math.Max(fastest, -slowest), min = slowest > 0 ? slowest : fastest < 0 ? -fastest : 0;
        // Written so that a value that is not a number counts as reachable.
        return !(perSound > 0)
            || system.MayFire(lowest, highest, slowest, fastest, min * perSound * (1 - change), max * perSound * (1 + change));
    }

    private double Scan(ref TrajectorySystem system, double end, bool atStop, bool sidesKnown)
    {
        (state[0], state[1], next[0], next[1]) = (step.Height0, step.Velocity0, step.HeightEnd, step.VelocityEnd);
        // After steps that were not scanned the signs are recorded again: no function was near zero on them.
        if (!sidesKnown && !events.Begin(ref system, Time, state, ref eventWork))
            return double.NaN;
        step.CopyDense(state, dense);
        return events.Scan(ref system, new DenseStep(step.Time, step.H, state, dense), end, next, atStop, ref eventWork);
    }

    private bool Stuck() => double.IsFinite(ErrorSquare())
        ? Fail(SolverFailureKind.StepTooSmall, Time, Invariant.Text($"The step fell below the spacing of times at {Time:G9} s."))
        : Fail(SolverFailureKind.NonFiniteState, Time,
            Invariant.Text($"Height, velocity or acceleration is not finite just after {Time:G9} s, however small the step."));

    private PhaseEnd FailUndefined()
    {
        Fail(SolverFailureKind.NonFiniteState, events.UndefinedAt,
            Invariant.Text($"Event function {events.Undefined} is not a number at {events.UndefinedAt:G9} s."));
        return PhaseEnd.Failed;
    }

    private bool Fail(SolverFailureKind kind, double time, string message)
    {
        Failure = FlightFromSi.Failure(kind, time, message);
        return false;
    }
}
