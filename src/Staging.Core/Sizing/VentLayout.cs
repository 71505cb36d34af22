using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>How a total vent area is to be drilled: directly below the upper nozzle, in equal holes.</summary>
/// <remarks>
/// An area that does not fit into one ring of holes is laid out as an opening along the tube, its wall cut away to four
/// fifths: the open side of a truss. It is tried to find where a gap stops to light, not to be built.
/// </remarks>
public sealed record VentLayout
{
    /// <summary>
    /// Share of the circumference that the holes may take [-]: a judgement, the rest must carry the load.
    /// </summary>
    private const double OpenCircumference = 0.8;

    /// <summary>
    /// Share of the tube up to the land that an opening may take [-]: something must be left to guide the stream into
    /// it.
    /// </summary>
    private const double OpenLength = 0.9;

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
    /// <returns>The vent: one ring, or an opening along the tube where one ring does not hold the area.</returns>
    internal Vent VentOf(GuideTube tube, Area total)
    {
        VentHoles holes = PatternOf(tube, total).Exact;
        double length = total.SquareMeters / (OpenCircumference * Math.PI * EndBore(tube));
        if (holes.Count == HoleCount || length <= holes.Diameter.Meters)
            return Vent.BelowNozzle(tube, holes, Land);
        return new Vent
        {
            Station = tube.Length - Land - Length.FromMeters(0.5 * length),
            Holes = holes,
            AxialLength = Length.FromMeters(length)
        };
    }

    /// <summary>Largest total area of one ring of holes, no hole wider than the bore.</summary>
    /// <param name="tube">The tube.</param>
    /// <returns>The area.</returns>
    internal Area LargestRing(GuideTube tube)
    {
        double bore = EndBore(tube),
            diameter = Math.Min(Math.Min(OpenCircumference * Math.PI * bore / HoleCount, bore), OpenLength * Room(tube));
        return Area.FromSquareMeters(HoleCount * Math.PI / 4 * diameter * diameter);
    }

    /// <summary>Largest total area that the tube offers: cut open along nine tenths of its length.</summary>
    /// <param name="tube">The tube.</param>
    /// <returns>The area.</returns>
    internal Area LargestOpening(GuideTube tube)
    {
        double cut = OpenCircumference * Math.PI * EndBore(tube) * OpenLength * Room(tube);
        double ring = LargestRing(tube).SquareMeters;
        return Area.FromSquareMeters(Math.Max(ring, Math.Min(cut, ring * (MaxHoles / HoleCount))));
    }

    /// <summary>
    /// The holes of a total area, with the drills next to them: as many times one ring as the area needs.
    /// </summary>
    internal HolePattern PatternOf(GuideTube tube, Area total)
    {
        int rings = Math.Max(1, (int)Math.Ceiling(total / LargestRing(tube) * (1 - 1e-9)));
        return HolePattern.ForArea(total, HoleCount * rings, WallThickness, Drills);
    }

    private const int MaxHoles = 1000;

    private double Room(GuideTube tube) => tube.Length.Meters - Land.Meters;

    private static double EndBore(GuideTube tube) => tube.BoreBelow(tube.Length).Meters;
}
