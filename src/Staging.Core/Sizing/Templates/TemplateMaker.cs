using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Makes the templates of the walls of a design.</summary>
internal static class TemplateMaker
{
    /// <summary>Outer diameters that differ by less are one tube [m].</summary>
    private const double SameDiameter = 1e-6;

    /// <summary>
    /// The guide tube first, then the jackets in the order of the design; drills are named by the series at hand first.
    /// </summary>
    public static ImmutableArray<HoleTemplate> Of(GapDesign design, DrillSeries? drills) =>
        [.. OfTube(design, drills), .. design.Jackets.SelectMany(j => OfJacket(j, drills, design.Tube.Length))];

    private static IEnumerable<HoleTemplate> OfTube(GapDesign design, DrillSeries? drills) =>
        from vent in design.Vents
        let bore = design.Tube.BoreBelow(vent.Station).Meters
        let outer = bore + 2 * vent.Holes.WallThickness.Meters
        group (Bore: bore, Rings: RingLayout.Spread(vent.Holes, vent.Station.Meters, vent.Spread, 0.5 * outer)) by Key(outer) into tube
        select Placed(WallHoles.GuideTube, tube.First().Bore, tube.Key * SameDiameter, tube.SelectMany(v => v.Rings), drills,
            design.Tube.Length);

    private static IEnumerable<HoleTemplate> OfJacket(Jacket jacket, DrillSeries? drills, Length gap)
    {
        ILookup<bool, JacketOpening> known = jacket.Openings.ToLookup(o => jacket.OuterBore is not null && o.Station is not null);
        IEnumerable<HoleTemplate> placed =
            from opening in known[true]
            let outer = jacket.OuterBore!.Value.Meters + 2 * opening.Holes.WallThickness.Meters
            group new PlacedRing(opening.Holes, opening.Station!.Value.Meters, 0) by Key(outer) into tube
            select Placed(jacket.Name, jacket.OuterBore!.Value.Meters, tube.Key * SameDiameter, tube, drills, gap);
        ImmutableArray<HoleRing> lost = [.. known[false].Select(o => new HoleRing(o.Holes, drills, o.Station?.Meters, 0, null, null))];
        return lost.IsEmpty ? placed : placed.Append(new HoleTemplate(jacket.Name, jacket.OuterBore?.Meters, null, gap, lost));
    }

    private static HoleTemplate Placed(string wall, double bore, double outer, IEnumerable<PlacedRing> holes, DrillSeries? drills,
        Length gap)
    {
        ImmutableArray<PlacedRing> rings = RingLayout.Turned(holes, 0.5 * outer);
        return new HoleTemplate(wall, bore, outer, gap,
            [.. rings.Select(r => new HoleRing(r.Holes, drills, r.Station, r.First, outer, RingLayout.Land(r, rings, 0.5 * outer)))]);
    }

    private static double Key(double diameter) => Math.Round(diameter / SameDiameter);
}
