using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>
/// What follows from one state of a lumped gap without any flow: parcels, the common pressure of tube and dead end, the
/// front.
/// </summary>
/// <remarks>Events and records need no more than this; the flows are taken where they are needed.</remarks>
internal readonly ref partial struct GapState : IGapView
{
    private readonly GapParameters p;
    private readonly ReadOnlySpan<double> y;

    public GapState(GapParameters p, ReadOnlySpan<double> y)
    {
        this.p = p;
        this.y = y;
        Hot = ZoneAt(StateLayout.Hot);
        Cold = p.Stirred ? Hot.Emptied : ZoneAt(StateLayout.Cold);
        DeadEnd = ZoneAt(StateLayout.DeadEnd);
        double added = JointMechanics.Extension(p, y) * p.JointArea;
        Pressure = (Hot.PressureVolume + Cold.PressureVolume + DeadEnd.PressureVolume) / (p.TubeVolume + added + p.DeadEndVolume);
        Stretch = added / p.Profile.FirstArea;

        double hotVolume = Hot.PressureVolume / Pressure;
        double gathered = p.Stirred ? hotVolume * Hot.ProductFraction * p.Products.R / Hot.R : hotVolume;
        Reach = p.Profile.StationOf(gathered - added);
    }

    /// <summary>Products behind the front; in the stirred model everything up to the last vent.</summary>
    public Zone Hot { get; }

    /// <summary>Air ahead of the front; empty in the stirred model.</summary>
    public Zone Cold { get; }

    public Zone DeadEnd { get; }

    public Zone Nozzle => DeadEnd;

    public double HotTemperature => Hot.Temperature;

    public double HotProducts => Hot.ProductFraction;

    public double JointTravel => y[StateLayout.Slide];

    /// <summary>The common pressure of tube and dead end [Pa].</summary>
    public double Pressure { get; }

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public double Stretch { get; }

    /// <summary>The front on the stations of the tube, which leave the joint with the forward body [m].</summary>
    public double Reach { get; }

    /// <summary>Distance of the front from the booster motor's forward end [m].</summary>
    public double Front => Reach + Stretch;

    /// <summary>Products in what leaves at the last vent [-]: half marks the arrival of the front.</summary>
    public double ProductsAtLastVent => p.Stirred ? Hot.ProductFraction : ShareOfHot;

    /// <summary>
    /// Share of the area of the last vents, and of what stirs the dead end, that draws from the hot parcel [-].
    /// </summary>
    public double ShareOfHot => PassedAt(p.LastVent, p.FrontThickness, Reach);

    /// <summary>The parcel that begins at a place of the state vector.</summary>
    public Zone ZoneAt(int at) => new(y[at], y[at + 1], y[at + 2], p.Products, p.Air);

    /// <summary>Pressure in a chamber [Pa].</summary>
    public double PressureOf(ChamberParameters chamber) => ZoneAt(chamber.At).PressureVolume / chamber.Volume;

    /// <summary>Pressure in a jacket [Pa].</summary>
    public double PressureOf(JacketParameters jacket) => ZoneAt(jacket.At).PressureVolume / jacket.Volume;

    /// <summary>Highest chamber pressure [Pa]; the gap pressure where there is no chamber.</summary>
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

    /// <summary>Whether pieces that still burn lie before the nozzle.</summary>
    public bool HasFireAtNozzle
    {
        get
        {
            foreach (ChamberParameters chamber in p.Chambers)
            {
                if (IsAtNozzle(chamber.Pieces))
                    return true;
            }

            return false;
        }
    }

    /// <summary>Whether pieces have come to the nozzle plane and still burn.</summary>
    public bool IsAtNozzle(PieceParameters? pieces) => pieces is not null && y[pieces.Way] <= 0 && y[pieces.Unburnt] > 0;

    /// <summary>Share of pieces on their way that burns behind the front [-]; all that stays at the booster.</summary>
    public double ShareBehindFront(PieceParameters pieces)
    {
        double station = Math.Min(p.TubeLength * (1 - y[pieces.Way]), p.LastVent);
        return station > 2 * p.FirstReach ? PassedAt(station, p.FrontThickness, Reach) : 1;
    }

    /// <summary>
    /// Share of what flows out at the booster's end that the hot parcel gives [-]: all but where there is none.
    /// </summary>
    public double ShareOfHotAtBooster => PassedAt(0, 0, Front);

    /// <summary>
    /// Share of products drawn by a vent: a smooth step over the front thickness, complete when the front stands at the
    /// hole.
    /// </summary>
    public double Passed(in VentParameters vent) => PassedAt(vent.Station, vent.FrontThickness, Reach);

    /// <summary>
    /// A front thicker than its way to a hole begins where the hot parcel does, so that no vent draws on a parcel that
    /// is not there.
    /// </summary>
    private double PassedAt(double station, double thickness, double front)
    {
        if (p.Stirred)
            return 1;
        double min = p.FirstReach, from = Math.Max(station - thickness, min), to = Math.Max(station, from + min);
        double s = Math.Clamp((front - to) / (to - from) + 1, 0, 1);
        return s * s * (3 - 2 * s);
    }

    /// <summary>What lies behind holes, and its pressure [Pa].</summary>
    public Zone Beyond(in OutletParameters outlet, out double pressure)
    {
        if (outlet.Jacket < 0)
        {
            pressure = outlet.OutsidePressure;
            return p.Outside;
        }

        JacketParameters jacket = p.Jackets[outlet.Jacket];
        Zone zone = ZoneAt(jacket.At);
        pressure = zone.PressureVolume / jacket.Volume;
        return zone;
    }

    /// <summary>
    /// Flow through a vent into what lies behind it at a pressure [Pa]. While pieces burn before the nozzle, a vent
    /// draws on the gas there by the share of its stirring that reaches it: all of it directly below the nozzle.
    /// </summary>
    public VentFlow FlowOf(in VentParameters vent, in Zone beyond, double behind)
    {
        OrificeSize size = vent.Outlet.Size;
        double fire = HasFireAtNozzle ? vent.Stirring : 0, stream = 1 - fire, hot = stream * Passed(vent), cold = stream - hot;
        double mHot = hot > 0 ? Flow(p.Law, size, hot, Hot, Pressure, beyond, behind) : 0;
        double mCold = cold > 0 ? Flow(p.Law, size, cold, Cold, Pressure, beyond, behind) : 0;
        double mFire = fire > 0 ? Flow(p.Law, size, fire, DeadEnd, Pressure, beyond, behind) : 0;
        return new VentFlow(mHot, mCold, mFire, VolumeOf(mHot, Hot, beyond) + VolumeOf(mCold, Cold, beyond),
            VolumeOf(mFire, DeadEnd, beyond));
    }

    /// <summary>
    /// Flow out of a chamber's opening whose diameter has grown to a share [kg/s]; negative into the chamber.
    /// </summary>
    public double FlowOf(ChamberParameters chamber, in Zone gas, double grown) =>
        Flow(chamber.OpeningLaw, chamber.Opening, grown * grown, gas, gas.PressureVolume / chamber.Volume, Hot, Pressure);

    /// <summary>
    /// Mass flow [kg/s] through a share of some holes from one gas to another; negative the other way, with the other
    /// gas. Nothing flows out of an emptied parcel.
    /// </summary>
    public static double Flow(IDischargeLaw law, in OrificeSize size, double share, in Zone one, double at, in Zone two, double other)
    {
        if (at == other || !(at > other ? one : two).IsGas)
            return 0;
        return at > other
            ? share * size.Area * law.MassFlux_kg_per_m2s(new OrificeConditions(at, one.Temperature, other, one.R, one.Gamma, size.Diameter,
                size.Thickness))
            : -share * size.Area * law.MassFlux_kg_per_m2s(new OrificeConditions(other, two.Temperature, at, two.R, two.Gamma,
                size.Diameter, size.Thickness));
    }

    /// <summary>Volume of a flow [m3/s] at the gap pressure.</summary>
    private double VolumeOf(double m, in Zone from, in Zone beyond) =>
        m >= 0 ? m * from.R * from.Temperature / Pressure : m * beyond.R * beyond.Temperature / Pressure;
}
