using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>One entry of a body's timeline, with the state on both sides of it.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Stage">Name of the stage concerned; for an event of the whole body, its uppermost stage.</param>
/// <param name="Before">The state just before.</param>
/// <param name="After">The state just after; differs where mass or thrust jumps.</param>
/// <param name="Note">What decided it, where something did; otherwise null.</param>
public readonly record struct FlightEvent(FlightEventKind Kind, string Stage, FlightState Before, FlightState After, string? Note)
{
    /// <summary>Time from ignition of the lowest stage [s].</summary>
    public Duration Time => After.Time;
}
