using Staging.Core.Discharge;

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
    public static double Write(GapParameters p, in GapPhase phase, double t, ReadOnlySpan<double> y, double volumeRate, Span<double> slope)
    {
        slope.Clear();
        var now = new GapState(p, y);
        var rates = new GapRates(p, slope);
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
            (double massFlow, double temperature) = p.Feed!.At(phase.FeedPiece, t);
            rates.Burn(StateLayout.Hot, massFlow, temperature);
        }

        double stirring = Vents(p, now, rates);
        Annulus(p, now, rates, JointMechanics.Annulus(p, y));
        Jackets(p, now, rates);
        WallHeat(p, now, rates);
        double hot = now.ShareOfHot;
        Stir(p, now, rates, hot, stirring);
        Equalise(p, now, rates, hot, volumeRate);
        return now.Pressure;
    }

    /// <summary>
    /// Flow through all vents; returns the sum of volume that leaves the stream per second times the share of its
    /// stirring at the nozzle plane.
    /// </summary>
    private static double Vents(GapParameters p, in GapState now, in GapRates rates)
    {
        double stirring = 0;
        foreach (ref readonly VentParameters vent in p.Vents.AsSpan())
        {
            Zone beyond = now.Beyond(vent.Outlet, out double behind);
            VentFlow flow = now.FlowOf(vent, beyond, behind);
            if (flow.Hot != 0)
                rates.Through(StateLayout.Hot, now.Hot, vent.Outlet, beyond, flow.Hot);
            if (flow.Cold != 0)
                rates.Through(StateLayout.Cold, now.Cold, vent.Outlet, beyond, flow.Cold);
            if (flow.Fire != 0)
                rates.Through(StateLayout.DeadEnd, now.DeadEnd, vent.Outlet, beyond, flow.Fire);
            stirring += vent.Stirring * Math.Max(0, flow.StreamVolume);
        }

        return stirring;
    }

    /// <summary>Flow through the annulus between parted bodies, at the booster's end of the gap.</summary>
    private static void Annulus(GapParameters p, in GapState now, in GapRates rates, double area)
    {
        if (!(area > 0))
            return;
        var outlet = new OutletParameters(new OrificeSize(area, Math.Sqrt(4 * area / Math.PI), 0), -1, p.OutsidePressure);
        double hot = now.ShareOfHotAtBooster;
        rates.Through(StateLayout.Hot, now.Hot, outlet, p.Outside,
            GapState.Flow(p.Law, outlet.Size, hot, now.Hot, now.Pressure, p.Outside, p.OutsidePressure));
        if (hot < 1)
            rates.Through(StateLayout.Cold, now.Cold, outlet, p.Outside,
                GapState.Flow(p.Law, outlet.Size, 1 - hot, now.Cold, now.Pressure, p.Outside, p.OutsidePressure));
    }

    /// <summary>Flow out of the jackets, and the heat that their walls take up.</summary>
    private static void Jackets(GapParameters p, in GapState now, in GapRates rates)
    {
        foreach (JacketParameters jacket in p.Jackets)
        {
            Zone zone = now.ZoneAt(jacket.At);
            double pressure = zone.PressureVolume / jacket.Volume;
            foreach (ref readonly OutletParameters opening in jacket.Openings.AsSpan())
            {
                Zone beyond = now.Beyond(opening, out double behind);
                rates.Through(jacket.At, zone, opening, beyond, GapState.Flow(p.Law, opening.Size, 1, zone, pressure, beyond, behind));
            }

            rates.Cool(jacket.At, p.Walls.Heat(zone, jacket.Wall));
        }
    }

    /// <summary>
    /// Heat that the walls take up: behind the front, beyond the last vent, and ahead of the front where pieces burn
    /// there; air that is just pushed stays as warm as it was.
    /// </summary>
    private static void WallHeat(GapParameters p, in GapState now, in GapRates rates)
    {
        double reach = p.Stirred ? p.LastVent : now.Reach;
        double wall = p.Profile.WallTo(reach) + Math.PI * p.Profile.FirstBore * now.Stretch;
        rates.Cool(StateLayout.Hot, p.Walls.Heat(now.Hot, wall));
        if (p.ThrowsPieces && !p.Stirred)
            rates.Cool(StateLayout.Cold, p.Walls.Heat(now.Cold, p.Profile.WallTo(p.LastVent) - p.Profile.WallTo(reach)));
        rates.Cool(StateLayout.DeadEnd, p.Walls.Heat(now.DeadEnd, p.DeadEndWall));
    }

    /// <summary>
    /// Turbulent exchange of equal volumes between the passing stream and the dead end. A stream that crossed an
    /// opening as a free jet brings outside air with it, and so much the less of its own gas.
    /// </summary>
    private static void Stir(GapParameters p, in GapState now, in GapRates rates, double hot, double stirring)
    {
        double pressure = now.Pressure;
        double volume = p.DeadEndExchange * now.SpeedFrom(stirring) * p.BoreArea;
        double rhoHot = now.Hot.DensityAt(pressure), rhoCold = now.Cold.DensityAt(pressure), rhoDead = now.DeadEnd.DensityAt(pressure);
        double own = volume;
        double share = now.JetShare;
        if (share < 1)
        {
            double rhoStream = hot * rhoHot + (1 - hot) * rhoCold, rhoAir = p.Outside.DensityAt(pressure);
            own = volume * share * rhoAir / (share * rhoAir + (1 - share) * rhoStream);
            rates.Enter(StateLayout.DeadEnd, (volume - own) * rhoAir);
            rates.Leave(StateLayout.DeadEnd, now.DeadEnd, (volume - own) * rhoDead);
        }

        rates.Move(StateLayout.Hot, StateLayout.DeadEnd, now.Hot, hot * own * rhoHot);
        rates.Move(StateLayout.DeadEnd, StateLayout.Hot, now.DeadEnd, hot * own * rhoDead);
        if (hot < 1)
        {
            rates.Move(StateLayout.Cold, StateLayout.DeadEnd, now.Cold, (1 - hot) * own * rhoCold);
            rates.Move(StateLayout.DeadEnd, StateLayout.Cold, now.DeadEnd, (1 - hot) * own * rhoDead);
        }
    }

    /// <summary>
    /// Adds the flow that keeps the dead end at the common pressure, and the work of the parcels on each other and on
    /// the joint.
    /// </summary>
    private static void Equalise(GapParameters p, in GapState now, in GapRates rates, double w, double volumeRate)
    {
        Zone hot = now.Hot, cold = now.Cold, dead = now.DeadEnd;
        double pr = now.Pressure;
        double sHot = rates.Swelling(StateLayout.Hot, hot), sCold = rates.Swelling(StateLayout.Cold, cold),
            sDead = rates.Swelling(StateLayout.DeadEnd, dead);
        double vHot = hot.PressureVolume / pr, vCold = cold.PressureVolume / pr, vDead = dead.PressureVolume / pr;
        double perHot = 1 / hot.Gamma, perCold = 1 / cold.Gamma;
        double give = vHot * perHot + vCold * perCold;
        double drive = sHot * perHot + sCold * perCold - pr * volumeRate;

        double dpdt;
        if (drive * vDead >= sDead * give)
        {
            // Into the dead end: volume flow phi from the tube, with vDead dp/dt = sDead + phi * swell.
            double rhoHot = hot.DensityAt(pr), rhoCold = cold.DensityAt(pr);
            double swell = w * rhoHot * dead.Swelling(hot) + (1 - w) * rhoCold * dead.Swelling(cold);
            dpdt = (drive + pr * sDead / swell) / (give + pr * vDead / swell);
            double phi = Math.Max(0, (vDead * dpdt - sDead) / swell);
            rates.Move(StateLayout.Hot, StateLayout.DeadEnd, hot, w * phi * rhoHot);
            if (w < 1)
                rates.Move(StateLayout.Cold, StateLayout.DeadEnd, cold, (1 - w) * phi * rhoCold);
        }
        else
        {
            // Out of the dead end: phi from it, with vDead dp/dt = sDead - phi * gamma p.
            double own = dead.Gamma * pr, rhoDead = dead.DensityAt(pr);
            double swell = rhoDead * (w * hot.Swelling(dead) * perHot + (1 - w) * cold.Swelling(dead) * perCold);
            dpdt = (drive + swell * sDead / own) / (give + swell * vDead / own);
            double phi = Math.Max(0, (sDead - vDead * dpdt) / own);
            rates.Move(StateLayout.DeadEnd, StateLayout.Hot, dead, w * phi * rhoDead);
            if (w < 1)
                rates.Move(StateLayout.DeadEnd, StateLayout.Cold, dead, (1 - w) * phi * rhoDead);
        }

        double work = pr * volumeRate;
        double hotWork = p.Stirred ? work : (rates.Swelling(StateLayout.Hot, hot) - vHot * dpdt) * perHot;
        rates.Push(StateLayout.Hot, hotWork, StateLayout.Cold, work - hotWork);
    }
}
