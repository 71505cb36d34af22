using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>A gap with other holes: the same total area in every wall on the way out.</summary>
internal static class VentPlacement
{
    /// <summary>
    /// The problem with a total area in the wall of the tube, and in the outer wall of every jacket that has holes.
    /// </summary>
    public static GapProblem Vented(this GapProblem problem, VentLayout layout, Area total)
    {
        GapDesign design = problem.Design;
        return problem with
        {
            Design = design with
            {
                Vents = [layout.VentOf(design.Tube, total) with { To = Target(design) }],
                Jackets = [.. design.Jackets.Select(j => j.Openings.IsEmpty ? j : j with { Openings = Scaled(j.Openings, total) })],
            },
        };
    }

    /// <summary>
    /// Where the uppermost vent of a design leads; into the first jacket, if any, of one that has no vents yet.
    /// </summary>
    public static VentTarget Target(GapDesign design) => design.Vents.MaxBy(v => v.Station.Meters) is { } last ? last.To
        : design.Jackets.IsEmpty ? VentTarget.Air
        : VentTarget.Jacket(design.Jackets[0].Name);

    /// <summary>Holes of the same number and places, with diameters that make a total area.</summary>
    private static EquatableArray<JacketOpening> Scaled(EquatableArray<JacketOpening> openings, Area total)
    {
        double factor = Math.Sqrt(total.SquareMeters / openings.Sum(o => o.Holes.TotalArea.SquareMeters));
        return [.. openings.Select(o => o with { Holes = o.Holes with { Diameter = factor * o.Holes.Diameter } })];
    }
}
