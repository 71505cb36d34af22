using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>How a total vent area is to be drilled: directly below the upper nozzle, in equal holes.</summary>
public sealed record VentLayout
{
    /// <summary>Number of equal holes round the tube, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int HoleCount { get; init => field = Guard.In(value, 1, 100); }

    /// <summary>Wall thickness of the tube [m], 0.01 mm to 50 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness { get; init => field = Guard.In(value, 1e-5, 0.05); }

    /// <summary>Material left between the upper edge of the holes and the nozzle plane [m], 0 to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Land { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>The drills at hand.</summary>
    public required DrillSeries Drills { get; init; }

    /// <summary>Holes of a total area, laid out this way.</summary>
    /// <param name="tube">The tube.</param>
    /// <param name="total">Total area.</param>
    /// <returns>The vent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">One hole would be smaller than 0.1 mm or larger than 100 mm, or lie outside the tube.</exception>
    public Vent VentOf(GuideTube tube, Area total) =>
        Vent.BelowNozzle(tube, HolePattern.ForArea(total, HoleCount, WallThickness, Drills).Exact, Land);
}
