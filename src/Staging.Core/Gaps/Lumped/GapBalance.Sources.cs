using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>What burns: in the chambers, on the way, before the nozzle.</summary>
internal static partial class GapBalance
{
    /// <summary>
    /// A chamber: what burns in it, its nozzle to the rear, and its forward opening, whose diameter grows evenly with
    /// time.
    /// </summary>
    private static void Chamber(
        GapParameters p, in GapState now, in GapRates rates, ChamberParameters c, double t, ReadOnlySpan<double> y, Span<double> slope)
    {
        Zone zone = now.ZoneAt(c.At);
        double pressure = zone.PressureVolume / c.Volume;
        rates.Burn(c.At, BurningIn(c, t, pressure, y, slope), c.FlameTemperature);
        if (c.Nozzle.Area > 0)
        {
            double rear = GapState.Flow(ConstantCoefficientLaw.Ideal, c.Nozzle, 1, zone, pressure, p.Outside, p.OutsidePressure);
            rates.Through(c.At, zone, new OutletParameters(c.Nozzle, -1, p.OutsidePressure), p.Outside, rear);
        }

        double grown = c.Grown(t, y), area = grown * grown;
        if (pressure >= now.Pressure)
        {
            rates.Move(c.At, StateLayout.Hot, zone, now.FlowOf(c, zone, grown));
            return;
        }

        double hot = now.ShareOfHotAtBooster;
        rates.Move(StateLayout.Hot, c.At, now.Hot,
            GapState.Flow(c.OpeningLaw, c.Opening, hot * area, now.Hot, now.Pressure, zone, pressure));
        if (hot < 1)
            rates.Move(StateLayout.Cold, c.At, now.Cold,
                GapState.Flow(c.OpeningLaw, c.Opening, (1 - hot) * area, now.Cold, now.Pressure, zone, pressure));
    }

    /// <summary>Mass that burns per second in a chamber [kg/s], and the slopes of the shares that are left.</summary>
    private static double BurningIn(ChamberParameters c, double t, double pressure, ReadOnlySpan<double> y, Span<double> slope)
    {
        double mass = c.Pulse?.Rate(t) ?? 0;
        if (c.Plates is { } plates && y[plates.Unburnt] > 0)
        {
            double share = plates.Rate(pressure);
            slope[plates.Unburnt] = -share;
            mass += plates.Mass * share;
        }

        if (c.Ring is { } ring && y[ring.Left] > 0)
        {
            double speed = ring.Speed(pressure);
            slope[ring.Left] = -speed / ring.Hole.End;
            mass += ring.Density * speed * ring.Hole.Face(ring.Growth(y[ring.Left]));
        }

        return mass;
    }

    /// <summary>
    /// Pieces on their way, whose gas comes to the products as far as those have followed and mixes with the air ahead
    /// of them otherwise, or before the nozzle, where it comes to the gas there.
    /// </summary>
    private static void Pieces(GapParameters p, in GapState now, in GapRates rates, PieceParameters pieces, double flame, double from,
        ReadOnlySpan<double> y, Span<double> slope)
    {
        if (y[pieces.Way] > 0)
            slope[pieces.Way] = -pieces.Speed / p.TubeLength;
        if (!(y[pieces.Unburnt] > 0))
            return;
        double burning = pieces.Burning(now.Pressure, from);
        slope[pieces.Unburnt] = -burning / pieces.Mass;
        double inTube = pieces.KeptFrom(from) * burning;
        if (now.IsAtNozzle(pieces))
        {
            rates.Burn(StateLayout.DeadEnd, inTube, flame);
            return;
        }

        double behind = now.ShareBehindFront(pieces);
        rates.Burn(StateLayout.Hot, behind * inTube, flame);
        if (behind < 1)
            rates.Burn(StateLayout.Cold, (1 - behind) * inTube, flame);
    }
}
