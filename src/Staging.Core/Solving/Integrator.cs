using System.Diagnostics;

namespace Staging.Core.Solving;

/// <summary>
/// Adaptive integration of one phase after another, with events located on the dense output.
/// All work memory is allocated once, here; steps allocate nothing.
/// </summary>
/// <remarks>
/// The event contract, one test a rule:
/// (1) every step is cut into <see cref="SolverOptions.EventScanParts"/> parts and scanned for sign changes;
/// (2) a root is located in time to <see cref="SolverOptions.EventTimeTolerance"/>, never by function value, and the state is taken just past it;
/// (3) a root at the start of a phase is not an event: a function counts once it has left zero;
/// (4) one firing a root;
/// (5) events within the time tolerance of an ending event all fire, in the order of their indices;
/// (6) an event that ends the phase hides every later root, so later events see the effects of earlier ones;
/// (7) known times are stop times: they are met exactly, and never located;
/// (8) nothing is evaluated beyond the stop time.
/// </remarks>
internal sealed class Integrator<TMethod>
    where TMethod : struct, IOneStepMethod
{
    private const double Safety = 0.9;
    private const double MostGrowth = 6;
    private const double MostShrink = 0.2;
    private const double ShrinkWhenNotFinite = 0.1;

    private readonly SolverOptions options;
    private readonly double[] absolute;
    private readonly double[] state;
    private readonly double[] next;
    private readonly double[] slopes;
    private readonly double[] error;
    private readonly double[] dense;
    private readonly double[] scratch;
    private readonly double eventTolerance;
    private double[] before = [];
    private double[] after = [];
    private double[] startValues = [];
    private FiredEvent[] fired = [];
    private int firedCount;
    private double suggestedStep;
    private double lastError = 1;
    private SolverStatistics statistics;

    /// <summary>Prepares an integration.</summary>
    /// <param name="options">Tolerances and limits.</param>
    /// <param name="scales">Natural size of each state; sets the absolute tolerance.</param>
    public Integrator(SolverOptions options, ReadOnlySpan<double> scales)
    {
        this.options = options;
        int n = scales.Length;
        absolute = new double[n];
        for (int i = 0; i < n; i++)
            absolute[i] = options.ScaledAbsoluteTolerance * scales[i];
        state = new double[n];
        next = new double[n];
        error = new double[n];
        scratch = new double[n];
        slopes = new double[TMethod.Stages * n];
        dense = new double[TMethod.DenseDegree * n];
        eventTolerance = options.EventTimeTolerance.Seconds;
    }

    /// <summary>Time reached [s].</summary>
    public double Time { get; set; }

    /// <summary>The state at <see cref="Time"/>; may be changed between phases.</summary>
    public Span<double> State => state;

    /// <summary>Events of the phase just run, in time order, equal times in index order.</summary>
    public ReadOnlySpan<FiredEvent> Fired => fired.AsSpan(0, firedCount);

    /// <summary>Work done so far.</summary>
    public SolverStatistics Statistics => statistics;

    /// <summary>Why the last phase failed; null when it did not.</summary>
    public SolverFailure? Failure { get; private set; }

    /// <summary>When set, every step has this size [s] and no error control: for convergence tests.</summary>
    public double? FixedStep { get; init; }

    /// <summary>Integrates one phase from <see cref="Time"/> to <paramref name="stop"/> [s], or to the first event that ends it.</summary>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public PhaseEnd Run<TSystem>(ref TSystem system, double stop, IStepSink? sink = null, CancellationToken cancel = default)
        where TSystem : IOdeSystem
    {
        Debug.Assert(system.Dimension == state.Length, "The system and the integrator disagree on the number of states.");
        Failure = null;
        firedCount = 0;
        if (!(stop > Time))
            return PhaseEnd.StopTime;
        Span<double> k = slopes;
        int n = state.Length;
        Derivative(ref system, Time, state, k[..n]);
        if (!Finite(state) || !Finite(k[..n]))
            return Fail(SolverFailureKind.NonFiniteState);
        PrepareEvents(ref system);
        if (suggestedStep <= 0)
            suggestedStep = FirstStep(ref system, stop - Time);

        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            if (!TryStep(ref system, stop, out double h, out bool atStop))
                return PhaseEnd.Failed;
            if (system.EventCount > 0 || sink is not null)
                TMethod.Dense(h, slopes, n, dense);
            var step = new DenseStep(Time, h, state, dense);
            double ending = system.EventCount > 0 ? ScanEvents(ref system, step, atStop ? stop : Time + h) : double.NaN;
            if (!double.IsNaN(ending))
            {
                step.At(ending, next);
                sink?.Accept(Time, ending - Time, step);
                Time = ending;
                next.CopyTo(state, 0);
                return PhaseEnd.Event;
            }

            sink?.Accept(Time, h, step);
            Time = atStop ? stop : Time + h;
            next.CopyTo(state, 0);
            k[^n..].CopyTo(k[..n]);
            if (atStop)
                return PhaseEnd.StopTime;
        }
    }

    private bool TryStep<TSystem>(ref TSystem system, double stop, out double h, out bool atStop)
        where TSystem : IOdeSystem
    {
        bool rejected = false;
        while (true)
        {
            double remaining = stop - Time;
            h = FixedStep ?? Math.Min(suggestedStep, options.LongestStep.Seconds);
            // A last step is stretched by up to one per cent, or two are evened out, so that no sliver is left over.
            atStop = h >= remaining * (FixedStep is null ? 0.99 : 1 - 1e-9);
            if (atStop)
                h = remaining;
            else if (FixedStep is null && h > 0.5 * remaining)
                h = 0.5 * remaining;
            if (Time + h <= Time)
            {
                Fail(SolverFailureKind.StepTooSmall);
                return false;
            }

            if (statistics.AcceptedSteps + statistics.RejectedSteps >= options.MostSteps)
            {
                Fail(SolverFailureKind.TooManySteps);
                return false;
            }

            TMethod.Step(ref system, Time, h, state, slopes, next, error);
            statistics = statistics with { DerivativeCalls = statistics.DerivativeCalls + TMethod.Stages - 1 };
            double e = ErrorNorm();
            if (FixedStep is not null && double.IsFinite(e))
            {
                statistics = statistics with { AcceptedSteps = statistics.AcceptedSteps + 1 };
                return true;
            }

            if (e <= 1)
            {
                // Proportional-integral step control (K. Gustafsson, ACM TOMS 17 (1991) 533-554).
                double growth = Safety * Math.Pow(Math.Max(e, 1e-10), -0.7 / TMethod.Order) * Math.Pow(lastError, 0.4 / TMethod.Order);
                growth = Math.Clamp(growth, MostShrink, rejected ? 1 : MostGrowth);
                suggestedStep = Math.Max(h * growth, atStop ? suggestedStep : 0);
                lastError = Math.Max(e, 1e-4);
                statistics = statistics with { AcceptedSteps = statistics.AcceptedSteps + 1 };
                return true;
            }

            statistics = statistics with { RejectedSteps = statistics.RejectedSteps + 1 };
            rejected = true;
            suggestedStep = double.IsFinite(e)
                ? h * Math.Max(MostShrink, Safety * Math.Pow(e, -1.0 / TMethod.Order))
                : h * ShrinkWhenNotFinite;
            if (FixedStep is not null)
            {
                Fail(SolverFailureKind.NonFiniteState);
                return false;
            }
        }
    }

    /// <summary>Root mean square of the local errors over their tolerances; infinite when anything is not finite.</summary>
    private double ErrorNorm()
    {
        double sum = 0;
        for (int i = 0; i < state.Length; i++)
        {
            double e = error[i] / (absolute[i] + options.RelativeTolerance * Math.Max(Math.Abs(state[i]), Math.Abs(next[i])));
            sum += e * e;
        }

        double norm = Math.Sqrt(sum / state.Length);
        return Finite(next) && double.IsFinite(norm) ? norm : double.PositiveInfinity;
    }

    /// <summary>A first step from the sizes of state, slope and curvature (Hairer, Norsett and Wanner 1993, section II.4).</summary>
    private double FirstStep<TSystem>(ref TSystem system, double remaining)
        where TSystem : IOdeSystem
    {
        int n = state.Length;
        Span<double> slope = slopes.AsSpan(0, n);
        double d0 = ScaledNorm(state), d1 = ScaledNorm(slope);
        double h0 = d0 < 1e-5 || d1 < 1e-5 ? 1e-6 * remaining : 0.01 * d0 / d1;
        h0 = Math.Min(h0, remaining);
        for (int i = 0; i < n; i++)
            next[i] = state[i] + h0 * slope[i];
        Derivative(ref system, Time + h0, next, scratch);
        for (int i = 0; i < n; i++)
            scratch[i] = (scratch[i] - slope[i]) / h0;
        double d2 = ScaledNorm(scratch);
        double largest = Math.Max(d1, d2);
        double h1 = double.IsFinite(largest) && largest > 1e-15 ? Math.Pow(0.01 / largest, 1.0 / TMethod.Order) : 1e-3 * h0;
        return Math.Min(Math.Min(100 * h0, h1), remaining);
    }

    private double ScaledNorm(ReadOnlySpan<double> values)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double e = values[i] / (absolute[i] + options.RelativeTolerance * Math.Abs(state[i]));
            sum += e * e;
        }

        return Math.Sqrt(sum / values.Length);
    }

    private void PrepareEvents<TSystem>(ref TSystem system)
        where TSystem : IOdeSystem
    {
        int count = system.EventCount;
        if (before.Length != count)
        {
            before = new double[count];
            after = new double[count];
            startValues = new double[count];
        }

        if (count > 0)
            EventValues(ref system, Time, state, before);
    }

    /// <summary>Finds the events of a step. Returns the time of the one that ends the phase, or not-a-number.</summary>
    private double ScanEvents<TSystem>(ref TSystem system, in DenseStep step, double end)
        where TSystem : IOdeSystem
    {
        int parts = options.EventScanParts;
        double partStart = step.Start;
        for (int part = 1; part <= parts; part++)
        {
            double partEnd = part == parts ? end : step.Start + (end - step.Start) * part / parts;
            if (part == parts)
                EventValues(ref system, partEnd, next, after);
            else
            {
                step.At(partEnd, scratch);
                EventValues(ref system, partEnd, scratch, after);
            }

            double ending = FireIn(ref system, step, partStart, partEnd);
            if (!double.IsNaN(ending))
                return ending;
            (before, after) = (after, before);
            partStart = partEnd;
        }

        return double.NaN;
    }

    private double FireIn<TSystem>(ref TSystem system, in DenseStep step, double from, double to)
        where TSystem : IOdeSystem
    {
        int first = firedCount;
        double ending = double.NaN;
        for (int i = 0; i < before.Length; i++)
        {
            EventRule rule = system.Rule(i);
            if (!Crosses(before[i], after[i], rule.Crossing))
                continue;
            var function = new EventOnStep<TSystem>(ref system, step, i, scratch, startValues);
            (_, double time) = BracketedRoot.Shrink(ref function, from, before[i], to, after[i], eventTolerance);
            statistics = statistics with { EventCalls = statistics.EventCalls + function.Calls };
            Keep(new FiredEvent(i, time));
            if (rule.EndsPhase && !(time >= ending))
                ending = time;
        }

        if (firedCount == first)
            return double.NaN;
        Span<FiredEvent> found = fired.AsSpan(first, firedCount - first);
        found.Sort(static (a, b) => a.Time != b.Time ? a.Time.CompareTo(b.Time) : a.Index.CompareTo(b.Index));
        if (double.IsNaN(ending))
            return ending;
        return CutAfter(found, first, ending);
    }

    /// <summary>Keeps the events up to the ending one and those simultaneous with it; the latter take its time and index order.</summary>
    private double CutAfter(Span<FiredEvent> found, int first, double ending)
    {
        int kept = 0;
        int simultaneousFrom = found.Length;
        double latest = ending;
        for (int i = 0; i < found.Length && found[i].Time <= ending + eventTolerance; i++)
        {
            if (found[i].Time >= ending - eventTolerance)
                simultaneousFrom = Math.Min(simultaneousFrom, i);
            latest = Math.Max(latest, found[i].Time);
            kept = i + 1;
        }

        for (int i = simultaneousFrom; i < kept; i++)
            found[i] = found[i] with { Time = latest };
        found[simultaneousFrom..kept].Sort(static (a, b) => a.Index.CompareTo(b.Index));
        firedCount = first + kept;
        return latest;
    }

    private void Keep(FiredEvent e)
    {
        if (firedCount == fired.Length)
            Array.Resize(ref fired, Math.Max(8, 2 * fired.Length));
        fired[firedCount++] = e;
    }

    private static bool Crosses(double before, double after, Crossing crossing) => crossing switch
    {
        Crossing.Rising => before < 0 && after >= 0,
        Crossing.Falling => before > 0 && after <= 0,
        _ => (before < 0 && after >= 0) || (before > 0 && after <= 0),
    };

    private void Derivative<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> y, Span<double> dydt)
        where TSystem : IOdeSystem
    {
        system.Derivative(t, y, dydt);
        statistics = statistics with { DerivativeCalls = statistics.DerivativeCalls + 1 };
    }

    private void EventValues<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> y, Span<double> values)
        where TSystem : IOdeSystem
    {
        system.EventValues(t, y, values);
        statistics = statistics with { EventCalls = statistics.EventCalls + 1 };
    }

    private static bool Finite(ReadOnlySpan<double> values)
    {
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
                return false;
        }

        return true;
    }

    private PhaseEnd Fail(SolverFailureKind kind)
    {
        string message = kind switch
        {
            SolverFailureKind.StepTooSmall => $"The step fell below the spacing of times at {Time:G9} s.",
            SolverFailureKind.TooManySteps => $"{options.MostSteps} steps were used up at {Time:G9} s.",
            _ => $"A state or a derivative was not finite at {Time:G9} s.",
        };
        Failure = new SolverFailure(kind, UnitsNet.Duration.FromSeconds(Time), message);
        return PhaseEnd.Failed;
    }

    /// <summary>One event function along the dense output of a step.</summary>
    private ref struct EventOnStep<TSystem> : IScalarFunction
        where TSystem : IOdeSystem
    {
        private readonly ref TSystem system;
        private readonly DenseStep step;
        private readonly int index;
        private readonly Span<double> y;
        private readonly Span<double> values;

        public EventOnStep(ref TSystem system, DenseStep step, int index, Span<double> y, Span<double> values)
        {
            this.system = ref system;
            this.step = step;
            this.index = index;
            this.y = y;
            this.values = values;
        }

        public int Calls { get; private set; }

        public double At(double x)
        {
            step.At(x, y);
            system.EventValues(x, y, values);
            Calls++;
            return values[index];
        }
    }
}
