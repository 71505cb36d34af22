using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>Takes the nearest drill for every wall on the way out.</summary>
internal static class VentDrilling
{
    /// <summary>
    /// Holes for every wall, the guide tube first, and the gap with those holes; exact ones where no drill fits.
    /// </summary>
    public static (ImmutableArray<WallHoles> Walls, GapProblem Problem) Of(GapProblem problem, VentLayout layout, Area total)
    {
        GapProblem exact = problem.WithVents(layout, total);
        GapDesign design = exact.Design;
        double limit = design.DischargeLaw.ThicknessToDiameterLimit;
        HolePattern inTube = layout.PatternOf(design.Tube, total);
        WallHoles tube = new(WallHoles.GuideTube, inTube,
            Nearer(inTube, holes => FitsWall(holes, limit) && FitsTube(holes, layout, design, inTube)));
        ImmutableArray<WallHoles> walls = [tube, .. VentPath.Jackets(design).Select(j => OfJacket(j, layout, limit))];
        return (walls, exact with { Design = Drilled(design, layout, walls) });
    }

    private static WallHoles OfJacket(Jacket jacket, VentLayout layout, double limit)
    {
        double total = jacket.Openings.Sum(o => o.Holes.TotalArea.SquareMeters);
        HolePattern pattern = HolePattern.ForArea(Area.FromSquareMeters(total), jacket.Openings.Sum(o => o.Holes.Count),
            jacket.Openings[0].Holes.WallThickness, layout.Drills);
        return new WallHoles(jacket.Name, pattern, Nearer(pattern, drilled => Enlarged(jacket, drilled, limit) is not null));
    }

    private static DrilledHoles? Nearer(HolePattern pattern, Func<VentHoles, bool> fits) =>
        new[] { pattern.Below, pattern.Above }.OfType<DrilledHoles>().Where(d => fits(d.Holes)).MinBy(d => Math.Abs(d.AreaError));

    private static bool FitsWall(VentHoles holes, double limit) => holes.WallThickness.Meters / holes.Diameter.Meters <= limit;

    /// <summary>Whether drilled holes need no more rings than the exact ones, and lie within the tube.</summary>
    private static bool FitsTube(VentHoles holes, VentLayout layout, GapDesign design, HolePattern exact) =>
        holes.TotalArea <= layout.LargestOpening(design.Tube)
        && layout.PatternOf(design.Tube, holes.TotalArea).Exact.Count == exact.Exact.Count;

    /// <summary>
    /// The openings of a jacket with the total area of drilled holes, in proportion; null where one of them cannot be
    /// drilled.
    /// </summary>
    private static ImmutableArray<JacketOpening>? Enlarged(Jacket jacket, VentHoles drilled, double limit)
    {
        double factor = Math.Sqrt(drilled.TotalArea.SquareMeters / jacket.Openings.Sum(o => o.Holes.TotalArea.SquareMeters));
        double narrowest = jacket.Openings.Min(o => o.Holes.Diameter.Meters), widest = jacket.Openings.Max(o => o.Holes.Diameter.Meters);
        if (!VentRange.IsDrillable(factor * narrowest) || !VentRange.IsDrillable(factor * widest))
            return null;
        ImmutableArray<JacketOpening> openings =
        [
            .. jacket.Openings.Select(o => o with
            {
                Holes = o.Holes with { Diameter = Length.FromMeters(factor * o.Holes.Diameter.Meters) },
            }),
        ];
        return openings.All(o => FitsWall(o.Holes, limit)) ? openings : null;
    }

    private static GapDesign Drilled(GapDesign design, VentLayout layout, ImmutableArray<WallHoles> walls)
    {
        Vent vent = design.Vents[0];
        if (walls[0].Drilled is { } tube)
            vent = layout.VentOf(design.Tube, tube.Holes.TotalArea) with { To = vent.To };
        double limit = design.DischargeLaw.ThicknessToDiameterLimit;
        return design with { Vents = [vent], Jackets = [.. design.Jackets.Select(Of)] };

        Jacket Of(Jacket jacket) =>
            walls.Skip(1).FirstOrDefault(w => w.Wall == jacket.Name)?.Drilled is { } drilled
            && Enlarged(jacket, drilled.Holes, limit) is { } openings
                ? jacket with { Openings = openings }
                : jacket;
    }
}
