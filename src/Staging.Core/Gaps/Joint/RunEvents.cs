namespace Staging.Core.Gaps;

/// <summary>
/// What the joint does in the course of a run, and what has happened: one state machine for every model.
/// </summary>
internal sealed class RunEvents(GapParameters p, IgnitionTracker ignition)
{
    private readonly List<(GapEventKind Kind, double Time)> happened = [(GapEventKind.BurnThrough, 0)];

    /// <summary>What the joint does now.</summary>
    public JointPhase Joint { get; private set; } = JointPhase.Held;

    /// <summary>Time at which the run ends because the joint has opened [s]; infinite while it has not.</summary>
    public double Last { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether the last source has ended.</summary>
    public bool SourceEnded { get; private set; }

    /// <summary>What has happened, in order of time; of two at one time, the one first entered.</summary>
    public IEnumerable<(GapEventKind Kind, double Time)> InOrder => happened.OrderBy(e => e.Time);

    /// <summary>A held joint starts to slide.</summary>
    public void Move(double time)
    {
        Joint = JointPhase.Slides;
        Add(GapEventKind.JointMoves, time);
    }

    /// <summary>A sliding joint comes to rest.</summary>
    public void Rest(double time)
    {
        Joint = JointPhase.Held;
        Add(GapEventKind.JointRests, time);
    }

    /// <summary>A sliding joint opens at a time; true when the run, which stands at another, ends with that.</summary>
    public bool Open(double time, double now)
    {
        Joint = JointPhase.Open;
        ignition.Open();
        Last = time + p.AfterOpening;
        Add(GapEventKind.JointOpens, time);
        return Last <= now;
    }

    /// <summary>
    /// Half of the gas at a place is products. It counts the first time, and while the joint guides the gas.
    /// </summary>
    public void Reach(GapEventKind place, double time)
    {
        if (Joint != JointPhase.Open && !happened.Exists(e => e.Kind == place))
            Add(place, time);
    }

    /// <summary>The last source has ended.</summary>
    public void EndSource(double time)
    {
        if (SourceEnded)
            return;
        SourceEnded = true;
        Add(GapEventKind.SourceEnded, time);
    }

    /// <summary>The gap is spent, which ends the run.</summary>
    public void Spend(double time) => Add(GapEventKind.Spent, time);

    /// <summary>
    /// The run is over: enters when the grain was lit. A run that has failed does not say so, because its margin is
    /// not known.
    /// </summary>
    public void Finish(bool hasFailed)
    {
        if (!hasFailed && ignition.IsLit)
            Add(GapEventKind.Lit, ignition.LitTime);
    }

    private void Add(GapEventKind kind, double time) => happened.Add((kind, time));
}
