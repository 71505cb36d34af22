using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Holes that lead out of a jacket.</summary>
public sealed record JacketOpening
{
    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Distance of the hole centres from the booster motor's forward end [m], 0 to 5 m, where the holes go through the
    /// outer wall: for the builder, the gas in a jacket has no place. Null, the default, for holes through a ring, and
    /// where it is not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? Station
    {
        get;
        init => field = value is { } station ? Guard.In(station, 0, 5) : null;
    }

    /// <summary>Where they lead: outside, or into another jacket.</summary>
    public required VentTarget To { get; init => field = Guard.NotNull(value); }
}
