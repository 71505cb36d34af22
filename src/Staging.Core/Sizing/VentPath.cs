using System.Collections.Immutable;
using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Sizing;

/// <summary>
/// Where the gas goes that a new vent lets out, and the design with holes of one total area in every wall on that way.
/// </summary>
internal static class VentPath
{
    /// <summary>The design with that area in the guide tube and in every jacket on the way out.</summary>
    public static GapDesign Vented(GapDesign design, VentLayout layout, Area total)
    {
        ImmutableArray<Jacket> way = Jackets(design);
        return design with
        {
            Vents = [layout.VentOf(design.Tube, total) with { To = Target(design) }],
            Jackets = [.. design.Jackets.Select(j => way.Contains(j) ? j with { Openings = Scaled(j.Openings, total) } : j)],
        };
    }

    /// <summary>Jackets with holes that the gas of a new vent comes through, in the order of the design.</summary>
    public static ImmutableArray<Jacket> Jackets(GapDesign design)
    {
        HashSet<string> names = [];
        var next = new Queue<VentTarget>([Target(design)]);
        while (next.TryDequeue(out VentTarget? target))
        {
            if (target.Jacket is not { } into || !names.Add(into))
                continue;
            foreach (JacketOpening opening in design.Jackets.Where(j => j.Name == into).SelectMany(j => j.Openings))
                next.Enqueue(opening.To);
        }

        return [.. design.Jackets.Where(j => names.Contains(j.Name) && !j.Openings.IsEmpty)];
    }

    /// <summary>
    /// Where the uppermost vent of a design leads; into the first jacket, if any, of one that has no vents yet.
    /// </summary>
    private static VentTarget Target(GapDesign design) => design.Vents.MaxBy(v => v.Station.Meters) is { } last ? last.To
        : design.Jackets.IsEmpty ? VentTarget.Air
        : VentTarget.IntoJacket(design.Jackets[0].Name);

    /// <summary>Holes of the same number and places, with diameters that make a total area.</summary>
    private static ImmutableArray<JacketOpening> Scaled(EquatableArray<JacketOpening> openings, Area total)
    {
        double factor = Math.Sqrt(total.SquareMeters / openings.Sum(o => o.Holes.TotalArea.SquareMeters));
        return [.. openings.Select(o => o with { Holes = o.Holes with { Diameter = factor * o.Holes.Diameter } })];
    }
}
