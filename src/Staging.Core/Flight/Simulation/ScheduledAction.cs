namespace Staging.Core.Flight;

/// <summary>An action on a stage at a known time [s]: an exact stop, never a root.</summary>
internal readonly record struct ScheduledAction(double Time, ActionKind Kind, int Stage)
{
    /// <summary>Whether this comes before another: by time, then kind, then stage.</summary>
    public bool IsBefore(ScheduledAction other) =>
        Time != other.Time ? Time < other.Time : Kind != other.Kind ? Kind < other.Kind : Stage < other.Stage;
}

/// <summary>The kinds of planned action; simultaneous actions come in this order.</summary>
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
