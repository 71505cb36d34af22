using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Conditions that the electronics check when the timer runs out; null means no condition. One condition that is not
/// met leaves the motor unlit.
/// </summary>
public sealed record ElectronicsGuards
{
    /// <summary>No condition at all.</summary>
    public static ElectronicsGuards None { get; } = new();

    /// <summary>Least speed along the flight direction [m/s], 0 to 5000 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Speed? MinSpeed { get; init => field = value is { } v ? Guard.In(v, 0, 5000) : null; }

    /// <summary>Least height above the site [m], 0 to 200 km.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? MinHeight { get; init => field = value is { } h ? Guard.In(h, 0, 200_000) : null; }

    /// <summary>Greatest height above the site [m], 0 to 200 km.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? MaxHeight { get; init => field = value is { } h ? Guard.In(h, 0, 200_000) : null; }

    /// <summary>Earliest time from lift-off [s], 0 to 1000 s; not met before lift-off.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? Earliest { get; init => field = value is { } t ? Guard.In(t, 0, 1000) : null; }

    /// <summary>Latest time from lift-off [s], 0 to 1000 s; not met before lift-off.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? Latest { get; init => field = value is { } t ? Guard.In(t, 0, 1000) : null; }

    /// <summary>
    /// Greatest tilt of the flight path from vertical [deg], 0 to 90. A straight-line flight does not tilt, so the tilt
    /// is a proxy: the path angle of a gravity turn at the speeds of this flight, started at the guide's
    /// elevation (see flight.md). Off a straight-up guide it refuses only past apogee.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Angle? MaxTilt { get; init => field = value is { } a ? Guard.In(a, 0, 90) : null; }
}
