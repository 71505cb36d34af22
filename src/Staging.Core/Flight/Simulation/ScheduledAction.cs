namespace Staging.Core.Flight;

/// <summary>Something that will happen to a stage at a known time [s]: an exact stop, never a root.</summary>
internal readonly record struct ScheduledAction(double Time, ActionKind Kind, int Stage)
{
    /// <summary>Whether this comes before another: by time, then kind, then stage.</summary>
    public bool IsBefore(ScheduledAction other) =>
        Time != other.Time ? Time < other.Time : Kind != other.Kind ? Kind < other.Kind : Stage < other.Stage;
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
