using Staging.Core.Discharge;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// What follows from one state of a lumped gap: parcels, the common pressure of tube and dead end, the front, and the
/// flow through each opening.
/// </summary>
internal readonly ref struct GapState<T>
    where T : struct, IReal<T>
{
    private readonly GapParameters p;
    private readonly StateVector<T> y;

    public GapState(GapParameters p, StateVector<T> y)
    {
        this.p = p;
        this.y = y;
        Hot = ZoneAt(StateLayout.Hot);
        IsAllHot = y.Values[StateLayout.Cold + 2] == 0;
        Cold = IsAllHot ? Hot.Emptied : ZoneAt(StateLayout.Cold);
        DeadEnd = ZoneAt(StateLayout.DeadEnd);
        Outside = new Zone<T>(p.Air, p.OutsideTemperature);
        T added = JointMechanics.Extension(p, y) * p.JointArea;
        Pressure = (Hot.PressureVolume + Cold.PressureVolume + DeadEnd.PressureVolume) / (p.TubeVolume + added + p.DeadEndVolume);
        Stretch = added / p.Profile.FirstArea;

        T hotVolume = Hot.PressureVolume / Pressure;
        T gathered = p.Stirred ? hotVolume * Hot.ProductFraction * p.Products.R / Hot.R : hotVolume;
        Reach = p.Profile.StationOf(gathered - added);
    }

    /// <summary>Products behind the front; in the stirred model everything up to the last vent.</summary>
    public readonly Zone<T> Hot;

    /// <summary>Air ahead of the front; empty where <see cref="IsAllHot"/>.</summary>
    public readonly Zone<T> Cold;

    public readonly Zone<T> DeadEnd;

    /// <summary>
    /// Whether there is no air ahead of the front: in the stirred model, and once the vents have taken it all.
    /// </summary>
    public readonly bool IsAllHot;

    /// <summary>Still air outside.</summary>
    public readonly Zone<T> Outside;

    /// <summary>The common pressure of tube and dead end [Pa].</summary>
    public readonly T Pressure;

    /// <summary>Lengthening of the tube by the sliding joint, as bore length [m].</summary>
    public readonly T Stretch;

    /// <summary>The front on the stations of the tube, which leave the joint with the forward body [m].</summary>
    public readonly T Reach;

    /// <summary>
    /// Share of the area of the last vents, and of what stirs the dead end, that draws from the hot parcel [-].
    /// </summary>
    public T ShareOfHot => PassedAt(p.LastVent, p.FrontThickness, Reach);

    /// <summary>
    /// Share of what flows out at the booster's end that the hot parcel gives [-]: all but where there is none.
    /// </summary>
    public T ShareOfHotAtBooster => PassedAt(0, 0, Reach + Stretch);

    /// <summary>
    /// Share of its speed and excess temperature that the stream keeps across all openings to the outside [-]. An
    /// opening of area A in a tube of bore d is taken for a free length A/(pi d), that of a tube whose whole wall is
    /// open over it; lengths add up, so that an opening counts the same however it is cut into parts.
    /// </summary>
    public T JetShare
    {
        get
        {
            if (p.FreeLength == 0)
                return 1;
            T hot = ShareOfHot;
            T density = hot / (Hot.R * Hot.Temperature) + (1 - hot) / (Cold.R * Cold.Temperature);
            return FreeJet.Share<T>(p.FreeLength, p.JetCore, density * p.Air.R * p.OutsideTemperature);
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

    /// <summary>The parcel that begins at a place of the state vector.</summary>
    public Zone<T> ZoneAt(int at) => new(y[at], y[at + 1], y[at + 2], p.Products, p.Air);

    /// <summary>Whether pieces have come to the nozzle plane and still burn.</summary>
    public bool IsAtNozzle(PieceParameters? pieces) => pieces is not null && y.Values[pieces.Way] == 0 && y.Values[pieces.Unburnt] != 0;

    /// <summary>Share of pieces on their way that burns behind the front [-]; all that stays at the booster.</summary>
    public T ShareBehindFront(PieceParameters pieces)
    {
        T station = T.Min(p.TubeLength * (1 - y[pieces.Way]), p.LastVent);
        return station.Value > 2 * p.FirstReach ? PassedAt(station, p.FrontThickness, Reach) : 1;
    }

    /// <summary>
    /// Share of products drawn by a vent: a smooth step over the front thickness, complete when the front stands at the
    /// hole. What is open at the booster's end stays there when the tube leaves with the forward body.
    /// </summary>
    public T Passed(in VentParameters vent) =>
        PassedAt(vent.Station, vent.FrontThickness, vent.Station > 0 ? Reach : Reach + Stretch);

    /// <summary>
    /// A front thicker than its way to a hole begins where the hot parcel does, so that no vent draws on a parcel that
    /// is not there.
    /// </summary>
    private T PassedAt(T station, double thickness, T front)
    {
        if (IsAllHot)
            return 1;
        double min = p.FirstReach;
        T from = T.Max(station - thickness, min), to = T.Max(station, from + min);
        T s = T.Clamp((front - to) / (to - from) + 1, 0, 1);
        return s * s * (3 - 2 * s);
    }

    /// <summary>What lies behind holes, and its pressure [Pa].</summary>
    public Zone<T> Beyond(in OutletParameters outlet, out T pressure)
    {
        if (outlet.Jacket < 0)
        {
            pressure = outlet.OutsidePressure;
            return Outside;
        }

        JacketParameters jacket = p.Jackets[outlet.Jacket];
        Zone<T> zone = ZoneAt(jacket.At);
        pressure = zone.PressureVolume / jacket.Volume;
        return zone;
    }

    /// <summary>Speed of the stirring that reaches the nozzle plane, from the sum over the vents [m/s].</summary>
    /// <param name="stirring">Outflow of each vent times the share of its stirring [m3/s].</param>
    public T SpeedFrom(T stirring) => stirring / p.BoreArea * JetShare;

    /// <summary>
    /// Flow through a vent into what lies behind it at a pressure [Pa]. While pieces burn before the nozzle, a vent
    /// draws on the gas there by the share of its stirring that reaches it: all of it directly below the nozzle.
    /// </summary>
    public VentFlow<T> FlowOf(in VentParameters vent, in Zone<T> beyond, T behind)
    {
        OrificeSize size = vent.Outlet.Size;
        double fire = HasFireAtNozzle ? vent.Stirring : 0, stream = 1 - fire;
        T hot = stream * Passed(vent), cold = stream - hot;
        T mHot = hot.Value > 0 ? Flow(p.Law, size, hot, Hot, Pressure, beyond, behind) : 0;
        T mCold = cold.Value > 0 ? Flow(p.Law, size, cold, Cold, Pressure, beyond, behind) : 0;
        T mFire = fire > 0 ? Flow(p.Law, size, fire, DeadEnd, Pressure, beyond, behind) : 0;
        return new VentFlow<T>(mHot, mCold, mFire, VolumeOf(mHot, Hot, beyond) + VolumeOf(mCold, Cold, beyond),
            VolumeOf(mFire, DeadEnd, beyond));
    }

    /// <summary>
    /// Flow out of a chamber's opening whose diameter has grown to a share [kg/s]; negative into the chamber.
    /// </summary>
    public T FlowOf(ChamberParameters chamber, in Zone<T> gas, T grown) =>
        Flow(chamber.OpeningLaw, chamber.Opening, grown * grown, gas, gas.PressureVolume / chamber.Volume, Hot, Pressure);

    /// <summary>
    /// Mass flow [kg/s] through a share of some holes from one gas to another; negative the other way, with the other
    /// gas. Nothing flows out of an emptied parcel.
    /// </summary>
    public static T Flow(IDischargeLaw law, in OrificeSize size, T share, in Zone<T> one, T at, in Zone<T> two, T other)
    {
        bool forth = at.Value >= other.Value;
        if ((at.Value == other.Value && !T.HasDerivatives) || !(forth ? one : two).IsGas)
            return 0;
        return forth
            ? share * size.Area * HoleFlux.Of(law, size, one, at, other)
            : -share * size.Area * HoleFlux.Of(law, size, two, other, at);
    }

    /// <summary>Volume of a flow [m3/s] at the gap pressure.</summary>
    private T VolumeOf(T m, in Zone<T> from, in Zone<T> beyond) =>
        m.Value >= 0 ? m * from.R * from.Temperature / Pressure : m * beyond.R * beyond.Temperature / Pressure;
}
