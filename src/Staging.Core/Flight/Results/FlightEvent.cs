using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>One entry of a body's timeline, with the state on both sides of it.</summary>
public sealed class FlightEvent
{
    internal FlightEvent(FlightEventKind kind, string stage, FlightState before, FlightState after, string? note) =>
        (Kind, Stage, Before, After, Note) = (kind, stage, before, after, note);

    /// <summary>The kind of event.</summary>
    public FlightEventKind Kind { get; }

    /// <summary>Name of the stage concerned; for an event of the whole body, its uppermost stage.</summary>
    public string Stage { get; }

    /// <summary>The state just before.</summary>
    public FlightState Before { get; }

    /// <summary>The state just after; differs where mass or thrust jumps.</summary>
    public FlightState After { get; }

    /// <summary>The reason, where there is one; otherwise null.</summary>
    public string? Note { get; }

    /// <summary>Time from ignition of the lowest stage [s].</summary>
    public Duration Time => After.Time;

    /// <summary>The event on one line.</summary>
    /// <returns>Kind and stage, then the state after it.</returns>
    public override string ToString() => $"{Kind} of {Stage} at {After}";
}
