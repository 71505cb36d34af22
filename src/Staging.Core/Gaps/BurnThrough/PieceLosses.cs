namespace Staging.Core.Gaps;

/// <summary>What openings to the outside lose of the pieces that fly past them.</summary>
/// <remarks>
/// Holes narrower than a piece lose none. Wider ones count, as for a free jet, as a length of tube without a wall,
/// x = A/(pi D), in bores x/D summed over them. Pieces that come out of a bore D in any forward direction alike come
/// into the same bore again at a distance x if they lie within its solid angle: the share 1 - cos(atan(D/(2 x))).
/// Nothing is lost at x = 0, nearly all across some bores; holes into a jacket lose none, because its wall turns them
/// back. So a guide tube across an open side keeps them.
/// </remarks>
internal readonly struct PieceLosses
{
    /// <summary>Losses of pieces of a size [m] along a tube.</summary>
    public PieceLosses(GapDesign design, double size)
    {
        double bores = 0, moment = 0;
        foreach (Vent vent in design.Vents)
        {
            if (vent.To.Jacket is not null || vent.Holes.Diameter.Meters <= size)
                continue;
            double bore = design.Tube.Profile.BoreBelow(vent.Station.Meters);
            double open = vent.Holes.TotalArea.SquareMeters / (Math.PI * bore * bore);
            bores += open;
            moment += open * vent.Station.Meters;
        }

        Kept = bores > 0 ? 1 - Math.Cos(Math.Atan(0.5 / bores)) : 1;
        Station = bores > 0 ? moment / bores : double.PositiveInfinity;
    }

    /// <summary>Share of the pieces that comes past all openings [-].</summary>
    public double Kept { get; }

    /// <summary>Mean station of the openings [m]; infinite where there are none.</summary>
    public double Station { get; }
}
