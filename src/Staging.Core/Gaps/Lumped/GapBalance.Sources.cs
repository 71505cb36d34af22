using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>What burns: in the chambers, on the way, before the nozzle.</summary>
/// <remarks>
/// A share that is used up is exactly zero from the event on that says so. Within a step it may fall below zero and
/// burns on, so that the right-hand side has no corner there.
/// </remarks>
internal static partial class GapBalance
{
    /// <summary>
    /// A chamber: what burns in it, its nozzle to the rear, and its forward opening, whose diameter grows evenly with
    /// time.
    /// </summary>
    private static void Chamber<T>(
        GapParameters p, in GapState<T> now, in GapRates<T> rates, ChamberParameters c, T t, StateVector<T> y, Span<T> slope)
        where T : struct, IReal<T>
    {
        Zone<T> zone = now.ZoneAt(c.At);
        T pressure = zone.PressureVolume / c.Volume;
        rates.Burn(c.At, BurningIn(c, t, pressure, y, slope), c.FlameTemperature);
        if (c.Nozzle.Area > 0)
        {
            T rear = GapState<T>.Flow(ConstantCoefficientLaw.Ideal, c.Nozzle, 1, zone, pressure, now.Outside, p.OutsidePressure);
            rates.Through(c.At, zone, new OutletParameters(c.Nozzle, -1, p.OutsidePressure), now.Outside, rear);
        }

        T grown = c.Grown(t, y), area = grown * grown;
        if (pressure.Value >= now.Pressure.Value)
        {
            rates.Move(c.At, StateLayout.Hot, zone, now.FlowOf(c, zone, grown));
            return;
        }

        T hot = now.ShareOfHotAtBooster;
        rates.Move(StateLayout.Hot, c.At, now.Hot,
            GapState<T>.Flow(c.OpeningLaw, c.Opening, hot * area, now.Hot, now.Pressure, zone, pressure));
        if (hot.Value < 1)
            rates.Move(StateLayout.Cold, c.At, now.Cold,
                GapState<T>.Flow(c.OpeningLaw, c.Opening, (1 - hot) * area, now.Cold, now.Pressure, zone, pressure));
    }

    /// <summary>Mass that burns per second in a chamber [kg/s], and the slopes of the shares that are left.</summary>
    private static T BurningIn<T>(ChamberParameters c, T t, T pressure, StateVector<T> y, Span<T> slope)
        where T : struct, IReal<T>
    {
        T mass = c.Pulse is { } pulse ? pulse.Rate(t) : 0;
        if (c.Plates is { } plates && y.Values[plates.Unburnt] != 0)
        {
            T share = plates.Rate(pressure);
            slope[plates.Unburnt] = -share;
            mass += plates.Mass * share;
        }

        if (c.Ring is { } ring && y.Values[ring.Left] != 0)
        {
            T speed = ring.Speed(pressure);
            slope[ring.Left] = -speed / ring.Hole.End;
            mass += ring.Density * speed * ring.Hole.Face(ring.Growth(y[ring.Left]));
        }

        return mass;
    }

    /// <summary>
    /// Pieces on their way, whose gas comes to the products as far as those have followed and mixes with the air ahead
    /// of them otherwise, or before the nozzle, where it comes to the gas there.
    /// </summary>
    private static void Pieces<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates, PieceParameters pieces, double flame,
        double from, StateVector<T> y, Span<T> slope)
        where T : struct, IReal<T>
    {
        if (y.Values[pieces.Way] != 0)
            slope[pieces.Way] = -pieces.Speed / p.TubeLength;
        if (y.Values[pieces.Unburnt] == 0)
            return;
        T burning = pieces.Burning(now.Pressure, from);
        slope[pieces.Unburnt] = -burning / pieces.Mass;
        T inTube = pieces.KeptFrom(from) * burning;
        if (now.IsAtNozzle(pieces))
        {
            rates.Burn(StateLayout.DeadEnd, inTube, flame);
            return;
        }

        T behind = now.ShareBehindFront(pieces);
        rates.Burn(StateLayout.Hot, behind * inTube, flame);
        if (behind.Value < 1)
            rates.Burn(StateLayout.Cold, (1 - behind) * inTube, flame);
    }
}
