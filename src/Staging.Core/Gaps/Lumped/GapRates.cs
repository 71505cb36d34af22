using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// The accounts of all parcels, kept where the slope of the state stands: products and air [kg/s], energy [W] of each,
/// and what leaves altogether. Every movement is entered on both sides.
/// </summary>
internal readonly ref struct GapRates<T>(GapParameters p, Span<T> slope)
    where T : struct, IReal<T>
{
    private readonly Span<T> slope = slope;

    /// <summary>Adds to the account of the parcel at a place of the state vector.</summary>
    public void Add(int at, T products, T air, T energy)
    {
        slope[at] += products;
        slope[at + 1] += air;
        slope[at + 2] += energy;
    }

    /// <summary>Adds <paramref name="m"/> kg/s of a parcel's gas with its enthalpy; negative takes it away.</summary>
    public void Add(int at, in Zone<T> gas, T m)
    {
        T products = m * gas.ProductFraction;
        Add(at, products, m - products, m * gas.Enthalpy);
    }

    /// <summary>Moves <paramref name="m"/> kg/s of the giving parcel's gas.</summary>
    public void Move(int from, int to, in Zone<T> gas, T m)
    {
        T products = m * gas.ProductFraction, air = m - products, energy = m * gas.Enthalpy;
        Add(from, -products, -air, -energy);
        Add(to, products, air, energy);
    }

    /// <summary>Lets <paramref name="m"/> kg/s of a parcel's gas go outside.</summary>
    public void Leave(int from, in Zone<T> gas, T m)
    {
        Add(from, gas, -m);
        slope[StateLayout.MassOut] += m;
        slope[StateLayout.EnergyOut] += m * gas.Enthalpy;
    }

    /// <summary>Lets <paramref name="m"/> kg/s of outside air in.</summary>
    public void Enter(int to, T m)
    {
        T h = m * p.Air.Cp * p.OutsideTemperature;
        Add(to, 0, m, h);
        slope[StateLayout.MassOut] -= m;
        slope[StateLayout.EnergyOut] -= h;
    }

    /// <summary>Gives <paramref name="m"/> kg/s of products at a temperature [K] from a source.</summary>
    public void Burn(int to, T m, T temperature)
    {
        T h = m * p.Products.Cp * temperature;
        Add(to, m, 0, h);
        slope[StateLayout.Burnt] += m;
        slope[StateLayout.BurntEnergy] += h;
    }

    /// <summary>Takes heat [W] from a parcel.</summary>
    public void Cool(int from, T heat)
    {
        slope[from + 2] -= heat;
        slope[StateLayout.EnergyOut] += heat;
    }

    /// <summary>Lets two parcels work on each other and, with what is left over, on the joint [W].</summary>
    public void Push(int one, T workOfOne, int other, T workOfOther)
    {
        slope[one + 2] -= workOfOne;
        slope[other + 2] -= workOfOther;
        slope[StateLayout.EnergyOut] += workOfOne + workOfOther;
    }

    /// <summary>
    /// Rate of (pressure times volume) of the parcel at fixed volume [W]: (gamma - 1) E + T (d(mR) - (gamma - 1) d(m
    /// cv)).
    /// </summary>
    public T Swelling(int at, in Zone<T> zone)
    {
        T massR = slope[at] * p.Products.R + slope[at + 1] * p.Air.R;
        T massCv = slope[at] * p.Products.Cv + slope[at + 1] * p.Air.Cv;
        return zone.GammaMinusOne * slope[at + 2] + zone.Temperature * (massR - zone.GammaMinusOne * massCv);
    }

    /// <summary>
    /// Flow of <paramref name="m"/> kg/s from a parcel through holes: to a jacket's parcel, or outside; negative the
    /// other way.
    /// </summary>
    public void Through(int from, in Zone<T> gas, in OutletParameters outlet, in Zone<T> beyond, T m)
    {
        if (outlet.Jacket >= 0)
        {
            int to = p.Jackets[outlet.Jacket].At;
            if (m.Value >= 0)
                Move(from, to, gas, m);
            else
                Move(to, from, beyond, -m);
        }
        else if (m.Value >= 0)
            Leave(from, gas, m);
        else
            Enter(from, -m);
    }
}
