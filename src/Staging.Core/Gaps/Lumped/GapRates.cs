namespace Staging.Core.Gaps;

/// <summary>
/// The accounts of all parcels, kept where the slope of the state stands: products and air [kg/s], energy [W] of each,
/// and what leaves altogether. Every movement is entered on both sides.
/// </summary>
internal readonly ref struct GapRates(GapParameters p, Span<double> slope)
{
    private readonly Span<double> slope = slope;

    /// <summary>Adds to the account of the parcel at a place of the state vector.</summary>
    public void Add(int at, double products, double air, double energy)
    {
        slope[at] += products;
        slope[at + 1] += air;
        slope[at + 2] += energy;
    }

    /// <summary>Adds <paramref name="m"/> kg/s of a parcel's gas with its enthalpy; negative takes it away.</summary>
    public void Add(int at, in Zone gas, double m)
    {
        double products = m * gas.ProductFraction;
        Add(at, products, m - products, m * gas.Enthalpy);
    }

    /// <summary>Moves <paramref name="m"/> kg/s of the giving parcel's gas.</summary>
    public void Move(int from, int to, in Zone gas, double m)
    {
        double products = m * gas.ProductFraction, air = m - products, energy = m * gas.Enthalpy;
        Add(from, -products, -air, -energy);
        Add(to, products, air, energy);
    }

    /// <summary>Lets <paramref name="m"/> kg/s of a parcel's gas go outside.</summary>
    public void Leave(int from, in Zone gas, double m)
    {
        Add(from, gas, -m);
        slope[StateLayout.MassOut] += m;
        slope[StateLayout.EnergyOut] += m * gas.Enthalpy;
    }

    /// <summary>Lets <paramref name="m"/> kg/s of outside air in.</summary>
    public void Enter(int to, double m)
    {
        double h = m * p.Air.Cp * p.OutsideTemperature;
        Add(to, 0, m, h);
        slope[StateLayout.MassOut] -= m;
        slope[StateLayout.EnergyOut] -= h;
    }

    /// <summary>Gives <paramref name="m"/> kg/s of products at a temperature [K] from a source.</summary>
    public void Burn(int to, double m, double temperature)
    {
        double h = m * p.Products.Cp * temperature;
        Add(to, m, 0, h);
        slope[StateLayout.Burnt] += m;
        slope[StateLayout.BurntEnergy] += h;
    }

    /// <summary>Takes heat [W] from a parcel.</summary>
    public void Cool(int from, double heat)
    {
        slope[from + 2] -= heat;
        slope[StateLayout.EnergyOut] += heat;
    }

    /// <summary>Lets two parcels work on each other and, with what is left over, on the joint [W].</summary>
    public void Push(int one, double workOfOne, int other, double workOfOther)
    {
        slope[one + 2] -= workOfOne;
        slope[other + 2] -= workOfOther;
        slope[StateLayout.EnergyOut] += workOfOne + workOfOther;
    }

    /// <summary>
    /// Rate of (pressure times volume) of the parcel at fixed volume [W]: (gamma - 1) E + T (d(mR) - (gamma - 1) d(m
    /// cv)).
    /// </summary>
    public double Swelling(int at, in Zone zone)
    {
        double massR = slope[at] * p.Products.R + slope[at + 1] * p.Air.R;
        double massCv = slope[at] * p.Products.Cv + slope[at + 1] * p.Air.Cv;
        return zone.GammaMinusOne * slope[at + 2] + zone.Temperature * (massR - zone.GammaMinusOne * massCv);
    }

    /// <summary>
    /// Flow of <paramref name="m"/> kg/s from a parcel through holes: to a jacket's parcel, or outside; negative the
    /// other way.
    /// </summary>
    public void Through(int from, in Zone gas, in OutletParameters outlet, in Zone beyond, double m)
    {
        if (outlet.Jacket >= 0)
        {
            int to = p.Jackets[outlet.Jacket].At;
            if (m >= 0)
                Move(from, to, gas, m);
            else
                Move(to, from, beyond, -m);
        }
        else if (m >= 0)
            Leave(from, gas, m);
        else
            Enter(from, -m);
    }
}
