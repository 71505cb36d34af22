namespace Staging.Core.Solving;

/// <summary>
/// Adaptive integration of one phase after another, with events located on the dense output by the rules of
/// <see cref="EventScan"/>. All work memory is allocated once, here; steps allocate nothing.
/// </summary>
internal sealed class Integrator<TMethod>
    where TMethod : struct, IOneStepMethod
{
    /// <summary>The last step is stretched by up to this fraction, so that no tiny step is left over.</summary>
    private const double Stretch = 0.01;

    /// <summary>The same under a fixed step, where only round-off is to be absorbed.</summary>
    private const double FixedStretch = 1e-9;

    /// <summary>Smallest step, in roundings of the time or of the longest step.</summary>
    private const double SmallestStep = 4 * 2.2204460492503131e-16;

    /// <summary>Share by which the slopes of two phases may differ where they meet without a new first step.</summary>
    private const double SlopeJump = 0.1;

    private readonly SolverOptions options;
    private readonly StepBudget budget;
    private readonly ErrorScale scale;
    private readonly EventScan events;
    private readonly double[] state;
    private readonly double[] next;
    private readonly double[] error;
    private readonly double[] dense;
    private readonly double[] lastSlope;
    private readonly double longest;
    private TMethod method;
    private StepControl control = new(TMethod.Order, TMethod.ErrorMemory);
    private SolverWork statistics;

    /// <summary>Prepares an integration.</summary>
    /// <param name="options">Tolerances and limits.</param>
    /// <param name="scales">Natural size of each state, above zero; sets the absolute tolerance.</param>
    /// <param name="budget">The steps allowed, if shared with another method; null for one of its own.</param>
    /// <param name="mates">Parts of one whole, see <see cref="ErrorScale"/>; empty where there are none.</param>
    /// <exception cref="ArgumentException">No states, or a scale that is not positive and finite.</exception>
    public Integrator(SolverOptions options, ReadOnlySpan<double> scales, StepBudget? budget = null, ReadOnlySpan<int> mates = default)
    {
        this.options = options;
        this.budget = budget ?? new StepBudget(options.MaxSteps);
        scale = new ErrorScale(options, scales, mates);
        int n = scales.Length;
        events = new EventScan(options, n);
        state = new double[n];
        next = new double[n];
        error = new double[n];
        lastSlope = new double[n];
        dense = new double[TMethod.DenseDegree * n];
        longest = options.LongestStep.Seconds;
        method = new TMethod();
        method.Allocate(scales);
    }

    /// <summary>Time reached [s].</summary>
    public double Time { get; set; }

    /// <summary>The state at <see cref="Time"/>; may be changed between phases.</summary>
    public Span<double> State => state;

    /// <summary>Events of the phase just run, in time order, equal times in index order.</summary>
    public ReadOnlySpan<FiredEvent> Fired => events.Fired;

    /// <summary>Work done so far.</summary>
    public SolverWork Statistics => statistics;

    /// <summary>Why the last phase failed; null when it did not.</summary>
    public SolverFailure? Failure { get; private set; }

    /// <summary>When set, every step has this size [s] and no error control: for convergence tests.</summary>
    public double? FixedStep { get; init => field = value is { } h ? Guard.Above(h, 0, double.MaxValue, "s") : null; }

    /// <summary>
    /// Whether a phase ends where stability binds its steps: another method does better there, and each such step errs
    /// by up to the tolerance, always to the same side.
    /// </summary>
    public bool EndsAtEdge { get; init; }

    /// <summary>Starts a new run at a time [s]: the step size is chosen afresh; work counts continue.</summary>
    public void Restart(double time)
    {
        Time = time;
        control.Restart(0);
    }

    /// <summary>
    /// Integrates one phase from <see cref="Time"/> to <paramref name="stop"/> [s], or to the first event that ends it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The stop time lies before <see cref="Time"/>, or is not a
    /// number.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public PhaseEnd Run<TSystem>(ref TSystem system, double stop, IStepObserver? sink = null, CancellationToken cancel = default)
        where TSystem : IOdeSystem
    {
        if (!(stop >= Time))
            throw new ArgumentOutOfRangeException(nameof(stop), stop,
                Invariant.Text($"The stop time lies before the time reached, {Time:G9} s."));
        if (system.Dimension != state.Length)
            throw new ArgumentException($"The system has {system.Dimension} states, the integrator {state.Length}.", nameof(system));
        Failure = null;
        events.Clear();
        if (stop == Time)
            return PhaseEnd.StopTime;
        if (!BeginPhase(ref system, stop))
            return PhaseEnd.Failed;
        bool watched = system.EventCount > 0;
        var edge = new EdgeWatch(TMethod.EdgeOfStability);
        while (true)
        {
            if (!TryStep(ref system, stop, cancel, out double h, out bool atStop))
                return PhaseEnd.Failed;
            double end = atStop ? stop : Time + h;
            if (watched || atStop || sink is not null)
                method.Dense(h, state, next, dense);
            var step = new DenseStep(Time, h, state, dense);
            double ending = watched ? events.Scan(ref system, step, end, next, atStop, ref statistics) : double.NaN;
            if (!double.IsNaN(events.UndefinedAt))
            {
                FailUndefined();
                return PhaseEnd.Failed;
            }

            bool ended = !double.IsNaN(ending);
            if (ended || atStop)
                step.SlopeAt(ended ? ending : end, lastSlope);
            if (ended && ending < end)
            {
                step.At(ending, next);
                end = ending;
                h = ending - Time;
            }

            if (h > 0)
                sink?.Accept(Time, h, step);
            Time = end;
            next.CopyTo(state, 0);
            if (ended || atStop)
                return ended ? PhaseEnd.Event : PhaseEnd.StopTime;
            if (sink is { IsDone: true })
                return PhaseEnd.Done;
            if (EndsAtEdge && edge.Sees(h * method.RateAtEnd(h, scale, state, error)))
            {
                step.SlopeAt(end, lastSlope);
                return PhaseEnd.AtEdge;
            }

            method.Advance();
        }
    }

    /// <summary>Evaluates slope and events, and chooses a first step unless the solution continues smoothly.</summary>
    private bool BeginPhase<TSystem>(ref TSystem system, double stop)
        where TSystem : IOdeSystem
    {
        int bad = ErrorScale.FirstNotFinite(state);
        if (bad >= 0)
            return Fail(SolverFailureKind.NonFiniteState, Time,
                Invariant.Text($"State {bad} is {state[bad]} at the start of a phase, at {Time:G9} s."));
        method.Begin(ref system, Time, state, ref statistics);
        bad = ErrorScale.FirstNotFinite(method.StartSlope);
        if (bad >= 0)
            return Fail(SolverFailureKind.NonFiniteState, Time, Invariant.Text(
                $"The derivative of state {bad} is {method.StartSlope[bad]} at the start of a phase, at {Time:G9} s."));

        if (!events.Begin(ref system, Time, state, ref statistics))
            return FailUndefined();
        if (FixedStep is not null)
            return true;
        double jump = scale.Distance(method.StartSlope, lastSlope, state);
        if (!(control.Suggested > 0) || !(jump <= SlopeJump * scale.Norm(lastSlope, state)))
        {
            control.Restart(FirstStep.Estimate(ref system, scale, TMethod.Order, Time, state, method.StartSlope, stop, longest, next,
                error));
            statistics = statistics with { DerivativeCalls = statistics.DerivativeCalls + 1 };
        }

        return true;
    }

    /// <summary>Takes one step, reducing it until it meets the tolerance.</summary>
    private bool TryStep<TSystem>(ref TSystem system, double stop, CancellationToken cancel, out double h, out bool atStop)
        where TSystem : IOdeSystem
    {
        bool rejected = false;
        double e = 0;
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            h = StepSize(stop, out atStop);
            if (!atStop && h < SmallestStep * Math.Max(Math.Abs(Time), Math.Min(stop - Time, longest)))
                return Stuck(e);
            if (budget.IsSpent)
                return Fail(SolverFailureKind.TooManySteps, Time, Invariant.Text($"{options.MaxSteps} steps were used up at {Time:G9} s."));

            budget.Take();
            method.Step(ref system, Time, h, state, next, error, ref statistics);
            e = scale.ErrorSquare(error, state, next);
            if (TSystem.HasDomain && e <= 1 && !system.Holds(next))
                e = double.PositiveInfinity;
            if (e <= 1 || (FixedStep is not null && double.IsFinite(e)))
            {
                control.Accept(h, e, rejected);
                statistics = statistics with { AcceptedSteps = statistics.AcceptedSteps + 1 };
                return true;
            }

            statistics = statistics with { RejectedSteps = statistics.RejectedSteps + 1 };
            if (FixedStep is not null)
                return Stuck(e);
            control.Reject(h, e);
            rejected = true;
        }
    }

    /// <summary>The step to try: as suggested, stretched to reach the stop time, and never beyond it.</summary>
    private double StepSize(double stop, out bool atStop)
    {
        double remaining = stop - Time;
        double h = FixedStep ?? Math.Min(control.Suggested, longest);
        atStop = h >= remaining * (1 - (FixedStep is null ? Stretch : FixedStretch));
        if (atStop)
            h = Time + remaining > stop ? Math.BitDecrement(remaining) : remaining;
        else if (FixedStep is null && h > 0.5 * remaining)
            h = 0.5 * remaining;
        return h;
    }

    private bool Stuck(double e)
    {
        if (double.IsFinite(e))
            return Fail(SolverFailureKind.StepTooSmall, Time, Invariant.Text($"The step fell below the spacing of times at {Time:G9} s."));
        int bad = ErrorScale.FirstNotFinite(next);
        return Fail(SolverFailureKind.NonFiniteState, Time, Invariant.Text(
            $"{(bad >= 0 ? $"State {bad} is not finite" : "A derivative is not finite, or a state cannot be,")} just after {Time:G9} s, "
            + $"however small the step."));
    }

    private bool FailUndefined() => Fail(SolverFailureKind.NonFiniteState, events.UndefinedAt,
        Invariant.Text($"Event function {events.Undefined} is not a number at {events.UndefinedAt:G9} s."));

    private bool Fail(SolverFailureKind kind, double time, string message)
    {
        Failure = SolverFailure.At(kind, time, message);
        return false;
    }
}
