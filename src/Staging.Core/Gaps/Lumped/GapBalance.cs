using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The balance of a lumped gap: all flows of one state, and the rate of the common pressure. In the two-zone model
/// hot products push the air ahead of a front without mixing, in the stirred model both are one parcel; beyond the last
/// vent lies a stirred dead end; all share one pressure. Chambers and jackets have their own.
/// </summary>
/// <remarks>
/// For a parcel at common pressure p with swelling rate S (the rate of p V at fixed volume): g p dV/dt = S - V dp/dt.
/// Summed over the tube, whose volume changes by the sliding joint only, this gives dp/dt. The dead end has a fixed
/// volume, so the flow into it is the one that makes its pressure follow p.
/// </remarks>
internal static partial class GapBalance
{
    /// <summary>Writes the slopes of all parcels and totals; the joint's are left zero.</summary>
    /// <param name="p">The gap.</param>
    /// <param name="phase">The phase.</param>
    /// <param name="t">Time [s].</param>
    /// <param name="y">State.</param>
    /// <param name="volumeRate">Growth of the tube by the sliding joint [m3/s].</param>
    /// <param name="slope">Receives the slopes.</param>
    /// <returns>The common pressure [Pa].</returns>
    public static T Write<T>(GapParameters p, in GapPhase phase, T t, StateVector<T> y, T volumeRate, Span<T> slope)
        where T : struct, IReal<T>
    {
        slope.Clear();
        var now = new GapState<T>(p, y);
        var rates = new GapRates<T>(p, slope);
        foreach (ChamberParameters chamber in p.Chambers)
        {
            if (chamber.Start > phase.Start)
                continue;
            Chamber(p, now, rates, chamber, t - chamber.Start, y, slope);
            if (chamber.Pieces is { } pieces)
                Pieces(p, now, rates, pieces, chamber.FlameTemperature, phase.Start, y, slope);
        }

        if (phase.FeedPiece >= 0)
        {
            (T massFlow, T temperature) = p.Feed!.At(phase.FeedPiece, t);
            rates.Burn(StateLayout.Hot, massFlow, temperature);
        }

        T stirring = Vents(p, now, rates);
        Annulus(p, now, rates, JointMechanics.Annulus(p, y[StateLayout.Slide]));
        Jackets(p, now, rates);
        WallHeat(p, now, rates);
        T hot = now.ShareOfHot;
        Stir(p, now, rates, hot, stirring);
        Equalise(p, now, rates, hot, volumeRate);
        return now.Pressure;
    }

    /// <summary>
    /// Flow through all vents; returns the sum of volume that leaves the stream per second times the share of its
    /// stirring at the nozzle plane.
    /// </summary>
    private static T Vents<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates)
        where T : struct, IReal<T>
    {
        T stirring = 0;
        foreach (ref readonly VentParameters vent in p.Vents.AsSpan())
        {
            Zone<T> beyond = now.Beyond(vent.Outlet, out T behind);
            VentFlow<T> flow = now.FlowOf(vent, beyond, behind);
            if (T.HasDerivatives || flow.Hot.Value != 0)
                rates.Through(StateLayout.Hot, now.Hot, vent.Outlet, beyond, flow.Hot);
            if (T.HasDerivatives || flow.Cold.Value != 0)
                rates.Through(StateLayout.Cold, now.Cold, vent.Outlet, beyond, flow.Cold);
            if (T.HasDerivatives || flow.Fire.Value != 0)
                rates.Through(StateLayout.DeadEnd, now.DeadEnd, vent.Outlet, beyond, flow.Fire);
            stirring += vent.Stirring * T.Max(flow.StreamVolume, 0);
        }

        return stirring;
    }

    /// <summary>Flow through the annulus between parted bodies, at the booster's end of the gap.</summary>
    private static void Annulus<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates, T area)
        where T : struct, IReal<T>
    {
        if (!(area.Value > 0))
            return;
        var outlet = new OutletParameters(new OrificeSize(1, Math.Sqrt(4 * area.Value / Math.PI), 0), -1, p.OutsidePressure);
        T hot = now.ShareOfHotAtBooster;
        rates.Through(StateLayout.Hot, now.Hot, outlet, now.Outside,
            GapState<T>.Flow(p.Law, outlet.Size, hot * area, now.Hot, now.Pressure, now.Outside, p.OutsidePressure));
        if (hot.Value < 1)
            rates.Through(StateLayout.Cold, now.Cold, outlet, now.Outside,
                GapState<T>.Flow(p.Law, outlet.Size, (1 - hot) * area, now.Cold, now.Pressure, now.Outside, p.OutsidePressure));
    }

    /// <summary>Flow out of the jackets, and the heat that their walls take up.</summary>
    private static void Jackets<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates)
        where T : struct, IReal<T>
    {
        foreach (JacketParameters jacket in p.Jackets)
        {
            Zone<T> zone = now.ZoneAt(jacket.At);
            T pressure = zone.PressureVolume / jacket.Volume;
            foreach (ref readonly OutletParameters opening in jacket.Openings.AsSpan())
            {
                Zone<T> beyond = now.Beyond(opening, out T behind);
                rates.Through(jacket.At, zone, opening, beyond, GapState<T>.Flow(p.Law, opening.Size, 1, zone, pressure, beyond, behind));
            }

            rates.Cool(jacket.At, p.Walls.Heat(zone, jacket.Wall));
        }
    }

    /// <summary>
    /// Heat that the walls take up: behind the front, beyond the last vent, and ahead of the front where pieces burn
    /// there; air that is just pushed stays as warm as it was.
    /// </summary>
    private static void WallHeat<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates)
        where T : struct, IReal<T>
    {
        T reach = p.Stirred ? p.LastVent : now.Reach;
        T wall = p.Profile.WallTo(reach) + Math.PI * p.Profile.FirstBore * now.Stretch;
        rates.Cool(StateLayout.Hot, p.Walls.Heat(now.Hot, wall));
        if (p.ThrowsPieces && !now.IsAllHot)
            rates.Cool(StateLayout.Cold, p.Walls.Heat(now.Cold, p.Profile.WallTo<T>(p.LastVent) - p.Profile.WallTo(reach)));
        rates.Cool(StateLayout.DeadEnd, p.Walls.Heat(now.DeadEnd, p.DeadEndWall));
    }

    /// <summary>
    /// Turbulent exchange of equal volumes between the passing stream and the dead end. A stream that crossed an
    /// opening as a free jet brings outside air with it, and so much the less of its own gas.
    /// </summary>
    private static void Stir<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates, T hot, T stirring)
        where T : struct, IReal<T>
    {
        T pressure = now.Pressure;
        T volume = p.DeadEndExchange * now.SpeedFrom(stirring) * p.BoreArea;
        T rhoHot = now.Hot.DensityAt(pressure), rhoCold = now.Cold.DensityAt(pressure), rhoDead = now.DeadEnd.DensityAt(pressure);
        T own = volume;
        T share = now.JetShare;
        if (share.Value < 1)
        {
            T rhoStream = hot * rhoHot + (1 - hot) * rhoCold, rhoAir = now.Outside.DensityAt(pressure);
            own = volume * share * rhoAir / (share * rhoAir + (1 - share) * rhoStream);
            rates.Enter(StateLayout.DeadEnd, (volume - own) * rhoAir);
            rates.Leave(StateLayout.DeadEnd, now.DeadEnd, (volume - own) * rhoDead);
        }

        rates.Move(StateLayout.Hot, StateLayout.DeadEnd, now.Hot, hot * own * rhoHot);
        rates.Move(StateLayout.DeadEnd, StateLayout.Hot, now.DeadEnd, hot * own * rhoDead);
        if (hot.Value < 1)
        {
            rates.Move(StateLayout.Cold, StateLayout.DeadEnd, now.Cold, (1 - hot) * own * rhoCold);
            rates.Move(StateLayout.DeadEnd, StateLayout.Cold, now.DeadEnd, (1 - hot) * own * rhoDead);
        }
    }

    /// <summary>
    /// Adds the flow that keeps the dead end at the common pressure, and the work of the parcels on each other and on
    /// the joint.
    /// </summary>
    private static void Equalise<T>(GapParameters p, in GapState<T> now, in GapRates<T> rates, T w, T volumeRate)
        where T : struct, IReal<T>
    {
        Zone<T> hot = now.Hot, cold = now.Cold, dead = now.DeadEnd;
        T pr = now.Pressure;
        T sHot = rates.Swelling(StateLayout.Hot, hot), sCold = rates.Swelling(StateLayout.Cold, cold),
            sDead = rates.Swelling(StateLayout.DeadEnd, dead);
        T vHot = hot.PressureVolume / pr, vCold = cold.PressureVolume / pr, vDead = dead.PressureVolume / pr;
        T perHot = 1 / hot.Gamma, perCold = 1 / cold.Gamma;
        T give = vHot * perHot + vCold * perCold;
        T drive = sHot * perHot + sCold * perCold - pr * volumeRate;

        T dpdt;
        if ((drive * vDead).Value >= (sDead * give).Value)
        {
            // Into the dead end: volume flow phi from the tube, with vDead dp/dt = sDead + phi * swell.
            T rhoHot = hot.DensityAt(pr), rhoCold = cold.DensityAt(pr);
            T swell = w * rhoHot * dead.Swelling(hot) + (1 - w) * rhoCold * dead.Swelling(cold);
            dpdt = (drive + pr * sDead / swell) / (give + pr * vDead / swell);
            T phi = T.Max((vDead * dpdt - sDead) / swell, 0);
            rates.Move(StateLayout.Hot, StateLayout.DeadEnd, hot, w * phi * rhoHot);
            if (w.Value < 1)
                rates.Move(StateLayout.Cold, StateLayout.DeadEnd, cold, (1 - w) * phi * rhoCold);
        }
        else
        {
            // Out of the dead end: phi from it, with vDead dp/dt = sDead - phi * gamma p.
            T own = dead.Gamma * pr, rhoDead = dead.DensityAt(pr);
            T swell = rhoDead * (w * hot.Swelling(dead) * perHot + (1 - w) * cold.Swelling(dead) * perCold);
            dpdt = (drive + swell * sDead / own) / (give + swell * vDead / own);
            T phi = T.Max((sDead - vDead * dpdt) / own, 0);
            rates.Move(StateLayout.DeadEnd, StateLayout.Hot, dead, w * phi * rhoDead);
            if (w.Value < 1)
                rates.Move(StateLayout.DeadEnd, StateLayout.Cold, dead, (1 - w) * phi * rhoDead);
        }

        T work = pr * volumeRate;
        T hotWork = now.IsAllHot ? work : (rates.Swelling(StateLayout.Hot, hot) - vHot * dpdt) * perHot;
        rates.Push(StateLayout.Hot, hotWork, StateLayout.Cold, work - hotWork);
    }
}
