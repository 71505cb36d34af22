namespace Staging.Core.Solving;

/// <summary>Finds the events of one step after another on its dense output.</summary>
/// <remarks>
/// The event contract, with tests for each rule:
/// (1) every step is cut into <see cref="SolverOptions.EventScanParts"/> parts and scanned for sign changes; two within
/// one part may be missed; (2) a root is located in time to <see cref="SolverOptions.EventTimeTolerance"/>, never by
/// function value, and the state is taken just past it; (3) a root at the start of a phase is not an event, even where
/// one method only hands over to another: a function counts once it has left zero, and a caller that puts a state back
/// onto its root sets the function to exact zero; (4) one firing per root, wherever it falls; a touch of zero from one
/// side is not a root, and is distinguished from one by the sign a time tolerance later; (5) events within the time
/// tolerance of an ending event all fire, in the order of their indices; (6) an event that ends the phase hides every
/// later root, so later events see the effects of earlier ones; (7) known times are stop times: they are met exactly,
/// and never located; a function that arrives at exact zero there fires there; (8) nothing is evaluated before the
/// start or beyond the stop time; (9) an event function that is not a number is a failure of the run, never an event
/// that did not happen.
/// <para>
/// Each event function is on a side of zero, and an event is the change of side. An exact zero belongs to neither: at
/// the start of a phase, at a part edge or at a step end its side is the one the function has a time tolerance later,
/// so that a touch is distinguished from a crossing. Only at the stop time, where nothing may be evaluated later, does
/// reaching zero count at once.
/// </para>
/// </remarks>
internal sealed class EventScan(SolverOptions options, int dimension)
{
    private readonly int parts = options.EventScanParts;
    private readonly double tolerance = options.EventTimeTolerance.Seconds;
    private readonly double[] y = new double[dimension];
    private readonly FiredEvents fired = new();
    private double[] before = [];
    private double[] after = [];
    private double[] later = [];
    private double[] work = [];
    private int[] side = [];

    /// <summary>Events of the phase so far.</summary>
    public ReadOnlySpan<FiredEvent> Fired => fired.All;

    /// <summary>Time [s] at which an event function was not a number; not-a-number where that did not happen.</summary>
    public double UndefinedAt { get; private set; } = double.NaN;

    /// <summary>Index of the event function that was not a number.</summary>
    public int Undefined { get; private set; }

    /// <summary>Discards the events of the previous phase.</summary>
    public void Clear()
    {
        fired.Clear();
        UndefinedAt = double.NaN;
    }

    /// <summary>Starts a phase: records the sign of each event function.</summary>
    /// <returns>False where an event function is not a number.</returns>
    public bool Begin<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> state, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        int events = system.EventCount;
        if (before.Length != events)
        {
            before = new double[events];
            after = new double[events];
            later = new double[events];
            work = new double[events];
            side = new int[events];
        }

        if (events == 0)
            return true;
        if (!Values(ref system, t, state, before, ref count))
            return false;
        for (int i = 0; i < events; i++)
            side[i] = Math.Sign(before[i]);
        return true;
    }

    /// <summary>Finds the events of a step.</summary>
    /// <param name="system">The system.</param>
    /// <param name="step">Dense output of the step.</param>
    /// <param name="end">End of the step [s].</param>
    /// <param name="yEnd">State at the end of the step.</param>
    /// <param name="atStop">Whether the end is the stop time of the phase.</param>
    /// <param name="count">Work done.</param>
    /// <returns>
    /// The time [s] of the event that ends the phase; not-a-number where none does, or where <see cref="UndefinedAt"/>
    /// is set.
    /// </returns>
    public double Scan<TSystem>(
        ref TSystem system, in DenseStep step, double end, ReadOnlySpan<double> yEnd, bool atStop, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        double from = step.Start;
        for (int part = 1; part <= parts; part++)
        {
            bool isLast = part == parts;
            double to = isLast ? end : step.Start + (end - step.Start) * part / parts;
            if (!(to > from))
                continue;
            if (!isLast)
                step.At(to, y);
            if (!Values(ref system, to, isLast ? yEnd : y, after, ref count))
                return double.NaN;
            double ending = ScanPart(ref system, step, from, to, end, isLast && atStop, ref count);
            if (!double.IsNaN(ending) || !double.IsNaN(UndefinedAt))
                return ending;
            (before, after) = (after, before);
            from = to;
        }

        return double.NaN;
    }

    private double ScanPart<TSystem>(
        ref TSystem system, in DenseStep step, double from, double to, double end, bool toStop, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        double ending = double.NaN;
        double armed = from;
        if (before.AsSpan().Contains(0))
        {
            armed = Math.Min(Math.BitIncrement(from + tolerance), to);
            if (!ValuesOn(ref system, step, armed, later, ref count))
                return double.NaN;
        }

        for (int i = 0; i < before.Length; i++)
        {
            EventRule rule = system.Rule(i);
            double start = from, startValue = before[i];
            if (before[i] == 0)
            {
                (start, startValue) = (armed, later[i]);
                if (Leaves(i, Math.Sign(later[i]), rule))
                    Fire(i, from, rule, ref ending);
                side[i] = Math.Sign(later[i]);
            }

            int now = Math.Sign(after[i]);
            if (now == side[i] || (now == 0 && !toStop))
                continue;
            if (Leaves(i, now, rule))
            {
                double time = now == 0 ? to : Locate(ref system, step, i, start, startValue, to, after[i], ref count);
                Fire(i, time, rule, ref ending);
            }

            side[i] = now;
        }

        if (double.IsNaN(ending) || !double.IsNaN(UndefinedAt))
            return double.NaN;
        double window = Math.Min(ending + tolerance, end);
        if (window > to || (window == to && to == end))
            FireJustAfter(ref system, step, to, window, ref ending, ref count);
        return double.IsNaN(UndefinedAt) ? fired.CutAt(ending, tolerance) : double.NaN;
    }

    /// <summary>Fires what changes side behind the part, but within the tolerance of its ending event.</summary>
    private void FireJustAfter<TSystem>(
        ref TSystem system, in DenseStep step, double to, double window, ref double ending, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        if (window > to && !ValuesOn(ref system, step, window, later, ref count))
            return;
        for (int i = 0; i < after.Length; i++)
        {
            EventRule rule = system.Rule(i);
            int now = Math.Sign(window > to ? later[i] : after[i]);
            if (now == side[i] || !Leaves(i, now, rule))
                continue;
            double time = after[i] == 0 ? to
                : now == 0 ? window
                : Locate(ref system, step, i, to, after[i], window, later[i], ref count);
            Fire(i, time, rule, ref ending);
            side[i] = now;
        }
    }

    /// <summary>
    /// Whether function i, going to a side, leaves the side it is on in the watched direction.
    /// </summary>
    private bool Leaves(int i, int to, EventRule rule) => side[i] != 0 && to != side[i] && rule.Crossing switch
    {
        Crossing.Rising => side[i] < 0,
        Crossing.Falling => side[i] > 0,
        _ => true,
    };

    private void Fire(int i, double time, EventRule rule, ref double ending)
    {
        fired.Insert(new FiredEvent(i, time));
        if (rule.EndsPhase && !(time >= ending))
            ending = time;
    }

    private double Locate<TSystem>(
        ref TSystem system, in DenseStep step, int i, double from, double fromValue, double to, double toValue, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        var function = new EventOnStep<TSystem>(ref system, step, i, y, work);
        (_, double time) = BracketedRoot.Shrink(ref function, from, fromValue, to, toValue, tolerance);
        count = count with { EventCalls = count.EventCalls + function.Calls };
        if (!double.IsNaN(function.UndefinedAt))
            (Undefined, UndefinedAt) = (i, function.UndefinedAt);
        return time;
    }

    private bool ValuesOn<TSystem>(ref TSystem system, in DenseStep step, double t, Span<double> values, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        step.At(t, y);
        return Values(ref system, t, y, values, ref count);
    }

    private bool Values<TSystem>(ref TSystem system, double t, ReadOnlySpan<double> state, Span<double> values, ref SolverWork count)
        where TSystem : IOdeSystem
    {
        system.EventValues(t, state, values);
        count = count with { EventCalls = count.EventCalls + 1 };
        for (int i = 0; i < values.Length; i++)
        {
            if (double.IsNaN(values[i]))
            {
                (Undefined, UndefinedAt) = (i, t);
                return false;
            }
        }

        return true;
    }
}
