using System.Collections.Immutable;
using Staging.Core.Discharge;

namespace Staging.Core.Sizing;

/// <summary>Rings of holes on one wall: how they are turned against each other, and how much wall they leave.</summary>
internal static class RingLayout
{
    /// <summary>
    /// Holes spread over a length as rings of equal number, evenly from its lowest to its highest ring; of the ways to
    /// do that, the one that leaves most wall.
    /// </summary>
    /// <param name="holes">All holes.</param>
    /// <param name="middle">Station of the middle [m].</param>
    /// <param name="spread">From the lowest ring to the highest [m].</param>
    /// <param name="outer">Outer radius of the tube [m].</param>
    public static IEnumerable<PlacedRing> Spread(VentHoles holes, double middle, double spread, double outer)
    {
        if (spread <= 0 || holes.Count == 1)
            return [new PlacedRing(holes, middle, 0)];
        return Enumerable.Range(2, holes.Count - 1).Where(rings => holes.Count % rings == 0).Select(Rings).MaxBy(Least)!;

        ImmutableArray<PlacedRing> Rings(int rings) => Turned(Enumerable.Range(0, rings).Select(i => new PlacedRing(
            holes with { Count = holes.Count / rings }, middle + spread * ((double)i / (rings - 1) - 0.5), 0)), outer);

        double Least(ImmutableArray<PlacedRing> rings) => rings.Min(ring => Land(ring, rings, outer));
    }

    /// <summary>
    /// The rings from the lowest up, each turned by half a step against the one below where that leaves more wall.
    /// </summary>
    public static ImmutableArray<PlacedRing> Turned(IEnumerable<PlacedRing> rings, double outer)
    {
        var placed = new List<PlacedRing>();
        foreach (PlacedRing ring in rings.OrderBy(r => r.Station))
        {
            PlacedRing straight = ring, turned = ring;
            if (placed is [.., var below])
            {
                straight = ring with { First = below.First };
                turned = ring with { First = below.First + 0.5 * ring.StepTo(below) };
            }

            placed.Add(Above(turned) > Above(straight) ? turned : straight);
        }

        return [.. placed];

        double Above(PlacedRing ring) => placed.Count == 0 ? 0 : placed.Min(other => ring.LandTo(other, outer));
    }

    /// <summary>Least wall that a ring leaves to its own holes and to the other rings [m].</summary>
    public static double Land(PlacedRing ring, ImmutableArray<PlacedRing> all, double outer) =>
        all.Remove(ring).Select(other => ring.LandTo(other, outer)).Append(ring.LandAround(outer)).Min();
}
