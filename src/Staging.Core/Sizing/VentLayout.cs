using System.Collections.Immutable;
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

    /// <summary>
    /// An opening of many holes is longer than one of them [-], if by next to nothing: one ring does not hold them.
    /// </summary>
    private const double LongerThanRing = 1 + 1e-6;

    /// <summary>Largest hole that can be described [m].</summary>
    private const double MaxDiameter = 0.1;

    private const int MaxHoles = 1000;

    /// <summary>Number of equal holes round the tube, 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int HoleCount { get; init => field = Guard.In(value, 1, 100); }

    /// <summary>
    /// Wall thickness of the tube [m], 0.01 mm to 50 mm. The default is 0.5 mm, a usual wound paper tube: common
    /// practice, no source.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length WallThickness { get; init => field = Guard.In(value, 1e-5, 0.05); } = Length.FromMillimeters(0.5);

    /// <summary>
    /// Material left between the upper edge of the holes and the nozzle plane [m], 0 to 1 m; less than the length of
    /// the tube. The default is 1 mm: common practice, no source.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length Land { get; init => field = Guard.In(value, 0, 1); } = Length.FromMillimeters(1);

    /// <summary>
    /// The drills at hand. The default is <see cref="DrillSeries.MetricHalves"/>, an ordinary household set: common
    /// practice, no source.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the series.</exception>
    public DrillSeries Drills { get; init => field = Guard.Defined(value); } = DrillSeries.MetricHalves;

    /// <summary>Whether holes can be drilled this way into every wall on the way out of a design.</summary>
    /// <param name="design">The design; of its own vents only the place they lead to is used.</param>
    /// <returns>
    /// An error <c>SIZ001</c> when the land leaves nothing of the tube, <c>SIZ006</c> when the wall is thicker than the
    /// bore, <c>SIZ002</c> when no total area can be drilled
    /// into all walls; empty when there is a range of areas.
    /// </returns>
    public ImmutableArray<ModelFinding> Check(GapDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        double room = Room(design.Tube) + Land.Meters;
        if (!(room > Land.Meters))
        {
            return
            [
                new ModelFinding(FindingSeverity.Error, "SIZ001", "Layout.Land", Invariant.Text($"A land of {Land.Millimeters:G4} mm "
                    + $"leaves nothing of the {room * 1e3:G4} mm of tube that holes below the nozzle may take; it must be at least 0 "
                    + $"and below that.")),
            ];
        }

        if (WallThickness > design.Tube.BoreBelow(design.Tube.Length))
        {
            return
            [
                new ModelFinding(FindingSeverity.Error, "SIZ006", "Layout.WallThickness", Invariant.Text($"A wall of "
                    + $"{WallThickness.Millimeters:G4} mm round a bore of {EndBore(design.Tube) * 1e3:G4} mm is no tube; it may be at "
                    + $"most as thick as the bore.")),
            ];
        }

        VentRange range = VentRange.Of(this, design);
        if (range.Smallest.Area < range.Largest.Area)
            return [];
        return
        [
            new ModelFinding(FindingSeverity.Error, "SIZ002", range.Smallest.Path, Invariant.Text($"No vent area can be drilled: the least "
                + $"is {range.Smallest.Area * 1e6:G4} mm2 ({range.Smallest.Reason}), the most is {range.Largest.Area * 1e6:G4} mm2 "
                + $"({range.Largest.Reason}); the least must be below the most.")),
        ];
    }

    /// <summary>
    /// Holes of a total area, laid out this way: one ring, or an opening along the tube where one ring does not hold
    /// the area. The area must lie in the <see cref="VentRange"/> of the design.
    /// </summary>
    internal Vent VentOf(GuideTube tube, Area total)
    {
        VentHoles holes = PatternOf(tube, total).Exact;
        double length = total.SquareMeters / (OpenCircumference * Math.PI * EndBore(tube));
        bool isRing = holes.Count * holes.Diameter.Meters <= Math.PI * EndBore(tube);
        if (isRing && (holes.Count == HoleCount || length <= holes.Diameter.Meters))
            return Vent.BelowNozzle(tube, holes, Land);
        length = Math.Max(length, holes.Diameter.Meters * LongerThanRing);
        return new Vent
        {
            Station = tube.Length - Land - Length.FromMeters(0.5 * length),
            Holes = holes,
            AxialLength = Length.FromMeters(length)
        };
    }

    /// <summary>Largest total area of one ring of holes, no hole wider than the bore.</summary>
    internal Area LargestRing(GuideTube tube)
    {
        double bore = EndBore(tube), around = Math.Min(OpenCircumference * Math.PI * bore / HoleCount, bore);
        double diameter = Math.Min(Math.Min(around, OpenLength * Room(tube)), MaxDiameter);
        return Area.FromSquareMeters(HoleCount * Math.PI / 4 * diameter * diameter);
    }

    /// <summary>
    /// Largest total area that the tube offers: cut open along nine tenths of its length, or as many holes as may be.
    /// </summary>
    internal Area LargestOpening(GuideTube tube)
    {
        double ring = LargestRing(tube).SquareMeters;
        return Area.FromSquareMeters(Math.Max(ring, Math.Min(Cut(tube), ring * (MaxHoles / HoleCount))));
    }

    /// <summary>Area of the tube cut open along nine tenths of its length [m2].</summary>
    internal double Cut(GuideTube tube) => OpenCircumference * Math.PI * EndBore(tube) * OpenLength * Room(tube);

    /// <summary>
    /// The holes of a total area, with the drills next to them: as many times one ring as the area needs.
    /// </summary>
    internal HolePattern PatternOf(GuideTube tube, Area total)
    {
        int rings = Math.Max(1, (int)Math.Ceiling(total / LargestRing(tube) * (1 - 1e-9)));
        return HolePattern.ForArea(total, HoleCount * rings, WallThickness, Drills);
    }

    /// <summary>
    /// Length of the tube that holes may take [m]: up to the land, from where the bore below is no narrower than that
    /// at the nozzle plane, by which holes are laid out.
    /// </summary>
    private double Room(GuideTube tube)
    {
        double from = 0, below = tube.Bore.Meters;
        foreach (BoreStep step in tube.Steps)
            (from, below) = (below < EndBore(tube) ? step.Station.Meters : from, step.Bore.Meters);
        return tube.Length.Meters - Land.Meters - from;
    }

    private static double EndBore(GuideTube tube) => tube.BoreBelow(tube.Length).Meters;
}
