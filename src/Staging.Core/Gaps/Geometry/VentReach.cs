using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>
/// Where along the tube a vent draws, where the front has passed it, and how far it stirs the gas beyond.
/// </summary>
internal static class VentReach
{
    /// <summary>
    /// Share of the area of all vents below which those above a place do not end the stream [-]: a judgement.
    /// </summary>
    private const double PinholeShare = 0.05;

    /// <summary>Station at which a vent begins to draw [m]: its lowest ring of holes.</summary>
    public static double Draws(this Vent vent) => vent.Station.Meters - 0.5 * vent.Spread;

    /// <summary>Station of its uppermost ring [m].</summary>
    public static double Ends(this Vent vent) => vent.Station.Meters + 0.5 * vent.Spread;

    /// <summary>
    /// Where the stream ends and the dead end begins: the highest vent that has, with those above it, more than a
    /// pinhole's share of the area.
    /// </summary>
    public static Vent? Last(ImmutableArray<Vent> vents)
    {
        double asked = PinholeShare * vents.Sum(v => v.Holes.TotalArea.SquareMeters), above = 0;
        foreach (Vent vent in vents.OrderByDescending(Ends))
        {
            above += vent.Holes.TotalArea.SquareMeters;
            if (above >= asked)
                return vent;
        }

        return null;
    }

    /// <summary>
    /// Share of the stirring of a stream that ends at a vent which reaches the end of a tube of a length [m]:
    /// exp(-depth/reach), its mean over the holes [-].
    /// </summary>
    public static double Stirring(this Vent vent, double length, double reach) =>
        Math.Exp((vent.Ends() - length) / reach) * MeanDecay(vent.Spread / reach);

    /// <summary>Mean of exp(-z) from 0 to a depth [-]: holes spread over a length stir from their own depths.</summary>
    private static double MeanDecay(double depth) => depth > 1e-6 ? (1 - Math.Exp(-depth)) / depth : 1;

    /// <summary>
    /// Station at which the front has passed all its holes [m]. Over a stretch whose wall is partly cut away to the
    /// outside, the open share of the tube is outside and the rest of it holds gas: the stretch is taken that much
    /// shorter. Where holes lead into a jacket, all of it holds gas.
    /// </summary>
    public static double Passed(this Vent vent, BoreProfile profile)
    {
        double wall = Math.PI * profile.BoreBelow(vent.Station.Meters) * vent.Spread;
        double open = wall > 0 && vent.To.Jacket is null ? Math.Min(1, vent.Holes.TotalArea.SquareMeters / wall) : 0;
        return vent.Draws() + (1 - open) * vent.Spread;
    }
}
