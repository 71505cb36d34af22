using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Holes out of the guide tube, at one station: to the outside, or into a jacket.</summary>
public sealed record Vent
{
    /// <summary>
    /// Distance of the hole centres from the booster motor's forward end [m], 0 to 5 m; must lie within the tube.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Station { get; init => field = Guard.In(value, 0, 5); }

    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>Where the holes lead; outside by default.</summary>
    public VentTarget To { get; init => field = Guard.NotNull(value); } = VentTarget.Air;

    /// <summary>
    /// Length along the tube over which the holes lie, from the lowest edge to the highest [m], at most 5 m; null for
    /// one ring of holes, whose length is their diameter. Products draw off from the lowest holes on; across a long
    /// opening the stream is a free jet.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? AxialLength
    {
        get;
        init => field = value is { } length ? Guard.In(length, 1e-4, 5) : null;
    }

    /// <summary>How much longer the opening is than one hole [m].</summary>
    internal double Spread => AxialLength is { } length ? Math.Max(0, length.Meters - Holes.Diameter.Meters) : 0;

    /// <summary>
    /// Holes as near to the upper nozzle as they go: their upper edges a land below the nozzle plane.
    /// </summary>
    /// <param name="tube">The tube.</param>
    /// <param name="holes">The holes.</param>
    /// <param name="land">Material left between the upper edge of the holes and the nozzle plane [m], 0 to 1 m.</param>
    /// <returns>The vent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The land is outside its range, or the holes do not fit in the
    /// tube.</exception>
    public static Vent BelowNozzle(GuideTube tube, VentHoles holes, Length land) => new()
    {
        Station = tube.Length - 0.5 * holes.Diameter - Guard.In(land, 0, 1, nameof(land)),
        Holes = holes,
    };
}
