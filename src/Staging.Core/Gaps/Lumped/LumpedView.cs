using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>A lumped gap at one moment, as events, records and the grain see it.</summary>
internal readonly ref struct LumpedView : IGapView
{
    private readonly GapParameters p;
    private readonly ReadOnlySpan<double> y;
    private readonly GapState<Real> now;

    public LumpedView(GapParameters p, ReadOnlySpan<double> y)
    {
        this.p = p;
        this.y = y;
        now = new GapState<Real>(p, new StateVector<Real>(y));
    }

    /// <inheritdoc/>
    public double Pressure => now.Pressure;

    /// <inheritdoc/>
    public double Front => now.Reach + now.Stretch;

    /// <summary>Distance of the front from the last vent [m].</summary>
    public double FrontRemaining => p.LastVent - now.Reach;

    /// <inheritdoc/>
    public double HotTemperature => now.Hot.Temperature;

    /// <inheritdoc/>
    public double HotProducts => now.Hot.ProductFraction;

    /// <inheritdoc/>
    public Zone<Real> Nozzle => now.DeadEnd;

    /// <inheritdoc/>
    public double JointTravel => y[StateLayout.Slide];

    /// <summary>Products in what leaves at the last vent [-]: half marks the arrival of the front.</summary>
    public double ProductsAtLastVent => p.Stirred ? now.Hot.ProductFraction : now.ShareOfHot;

    /// <summary>Whether pieces that still burn lie before the nozzle.</summary>
    public bool HasFireAtNozzle => now.HasFireAtNozzle;

    /// <inheritdoc/>
    public double ChamberPressure
    {
        get
        {
            double most = p.Chambers.Length == 0 ? Pressure : 0;
            foreach (ChamberParameters chamber in p.Chambers)
                most = Math.Max(most, PressureOf(chamber));
            return most;
        }
    }

    /// <inheritdoc/>
    public double[] JacketPressures
    {
        get
        {
            double[] pressures = p.Jackets.Length == 0 ? [] : new double[p.Jackets.Length];
            for (int i = 0; i < pressures.Length; i++)
                pressures[i] = PressureOf(p.Jackets[i]);
            return pressures;
        }
    }

    /// <summary>Highest pressure anywhere [Pa].</summary>
    public double MaxPressure
    {
        get
        {
            double most = Math.Max(Pressure, ChamberPressure);
            foreach (JacketParameters jacket in p.Jackets)
                most = Math.Max(most, PressureOf(jacket));
            return most;
        }
    }

    /// <summary>Whether all that burns down by the pressure has burnt.</summary>
    public bool IsBurnt
    {
        get
        {
            for (int i = p.FirstShare; i < p.FirstWay; i++)
            {
                if (y[i] > 0)
                    return false;
            }

            return true;
        }
    }

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
                VentFlow<Real> flow = now.FlowOf(vent, now.Beyond(vent.Outlet, out Real behind), behind);
                stirring += vent.Stirring * Math.Max(0, flow.StreamVolume + flow.FireVolume);
            }

            return now.SpeedFrom(stirring);
        }
    }

    /// <summary>
    /// Heat transfer to the grain at a time [s]: by the gas before the nozzle, or by the jet of a chamber where that
    /// brings more.
    /// </summary>
    public GrainHeating HeatingAt(double time)
    {
        var heating = new GrainHeating(now.DeadEnd, Pressure, SpeedAtNozzle, p);
        var jet = new SourceJet(p, JointTravel);
        foreach (ChamberParameters chamber in p.Chambers)
        {
            double grown = Grown(chamber, time), diameter = grown * chamber.Opening.Diameter;
            if (!jet.Arrives(diameter))
                continue;
            Zone<Real> gas = now.ZoneAt(chamber.At);
            double m = now.FlowOf(chamber, gas, grown);
            heating = heating.Or(jet.At(m, grown * grown * chamber.Opening.Area, diameter, gas.Temperature, gas.R, gas.ProductFraction), p);
        }

        return heating;
    }

    /// <summary>Whether the core of a chamber's jet reaches the throat at a time [s].</summary>
    public bool CoreReachesAt(double time)
    {
        var jet = new SourceJet(p, JointTravel);
        foreach (ChamberParameters chamber in p.Chambers)
        {
            Zone<Real> gas = now.ZoneAt(chamber.At);
            if (jet.CoreReaches(Grown(chamber, time) * chamber.Opening.Diameter, gas.Temperature, gas.R))
                return true;
        }

        return false;
    }

    /// <summary>The parcel that begins at a place of the state vector.</summary>
    public Zone<Real> ZoneAt(int at) => now.ZoneAt(at);

    private double Grown(ChamberParameters chamber, double time) =>
        chamber.Grown(time - chamber.Start, new StateVector<Real>(y));

    private double PressureOf(ChamberParameters chamber) => now.ZoneAt(chamber.At).PressureVolume / chamber.Volume;

    private double PressureOf(JacketParameters jacket) => now.ZoneAt(jacket.At).PressureVolume / jacket.Volume;
}
