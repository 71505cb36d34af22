namespace Staging.Core.Flight;

/// <summary>Something that will happen to a stage at a known time [s]: an exact stop, never a root.</summary>
internal readonly record struct PlannedAction(double Time, ActionKind Kind, int Stage) : IComparable<PlannedAction>
{
    public int CompareTo(PlannedAction other)
    {
        int byTime = Time.CompareTo(other.Time);
        if (byTime != 0)
            return byTime;
        int byKind = Kind.CompareTo(other.Kind);
        return byKind != 0 ? byKind : Stage.CompareTo(other.Stage);
    }
}

/// <summary>What can be planned; simultaneous actions come in this order.</summary>
internal enum ActionKind
{
    Burnout,
    BurnThrough,
    TimerEnd,
    Separation,
    Ignition,
    Ejection,
    DeviceOpens,
}
