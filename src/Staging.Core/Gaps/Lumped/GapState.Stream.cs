namespace Staging.Core.Gaps;

/// <summary>The stream at the nozzle plane, and how it heats the grain.</summary>
internal readonly ref partial struct GapState
{
    /// <summary>
    /// Speed of the stirring that reaches the nozzle plane [m/s]: each vent ends a part of the stream, whose stirring
    /// falls with the depth from there.
    /// </summary>
    public double SpeedAtNozzle
    {
        get
        {
            double stirring = 0;
            foreach (ref readonly VentParameters vent in p.Vents.AsSpan())
            {
                VentFlow flow = FlowOf(vent, Beyond(vent.Outlet, out double behind), behind);
                stirring += vent.Stirring * Math.Max(0, flow.StreamVolume + flow.FireVolume);
            }

            return SpeedFrom(stirring);
        }
    }

    /// <summary>The same for a known sum over the vents of outflow times its share of stirring [m3/s].</summary>
    public double SpeedFrom(double stirring) => stirring / p.BoreArea * JetShare;

    /// <summary>
    /// Share of its speed and excess temperature that the stream keeps across all openings to the outside [-]. An
    /// opening of area A in a tube of bore d is taken for a free length A/(pi d), that of a tube whose whole wall is
    /// open over it; lengths add up, so that an opening counts the same however it is cut into parts.
    /// </summary>
    public double JetShare
    {
        get
        {
            if (p.FreeLength == 0)
                return 1;
            double hot = ShareOfHot;
            double density = hot / (Hot.R * Hot.Temperature) + (1 - hot) / (Cold.R * Cold.Temperature);
            return FreeJet.Share(p.FreeLength, p.JetCore, density * p.Outside.R * p.Outside.Temperature);
        }
    }

    /// <summary>
    /// Heat transfer to the grain at a time [s]: by the gas before the nozzle, or by the jet of a chamber where that
    /// brings more.
    /// </summary>
    public GrainHeating HeatingAt(double time)
    {
        var heating = new GrainHeating(DeadEnd, Pressure, SpeedAtNozzle, p);
        var jet = new SourceJet(p, y[StateLayout.Slide]);
        foreach (ChamberParameters chamber in p.Chambers)
        {
            double grown = chamber.Grown(time - chamber.Start, y), diameter = grown * chamber.Opening.Diameter;
            if (!jet.Arrives(diameter))
                continue;
            Zone gas = ZoneAt(chamber.At);
            double m = FlowOf(chamber, gas, grown);
            heating = heating.Or(jet.At(m, grown * grown * chamber.Opening.Area, diameter, gas.Temperature, gas.R, gas.ProductFraction), p);
        }

        return heating;
    }

    /// <summary>Whether the core of a chamber's jet reaches the throat at a time [s].</summary>
    public bool CoreReachesAt(double time)
    {
        var jet = new SourceJet(p, y[StateLayout.Slide]);
        foreach (ChamberParameters chamber in p.Chambers)
        {
            Zone gas = ZoneAt(chamber.At);
            if (jet.CoreReaches(chamber.Grown(time - chamber.Start, y) * chamber.Opening.Diameter, gas.Temperature, gas.R))
                return true;
        }

        return false;
    }
}
