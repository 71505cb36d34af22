using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Holes from the guide tube to the outside, at one station.</summary>
public sealed record Vent
{
    /// <summary>Distance of the hole centres from the booster motor's forward end [m], 0 to 5 m; must lie within the tube.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Station { get; init => field = Guard.In(value, 0, 5); }

    /// <summary>The holes.</summary>
    public required VentHoles Holes { get; init => field = Guard.NotNull(value); }

    /// <summary>Holes as near to the upper nozzle as they go: their upper edges a land below the nozzle plane.</summary>
    /// <param name="tube">The tube.</param>
    /// <param name="holes">The holes.</param>
    /// <param name="land">Material left between the upper edge of the holes and the nozzle plane [m], 0 to 1 m.</param>
    /// <returns>The vent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The land is outside its range, or the holes do not fit in the tube.</exception>
    public static Vent BelowNozzle(GuideTube tube, VentHoles holes, Length land) => new()
    {
        Station = tube.Length - 0.5 * holes.Diameter - Guard.In(land, 0, 1, nameof(land)),
        Holes = holes,
    };
}
