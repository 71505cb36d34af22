namespace Staging.Core.Gaps;

/// <summary>What flows into one parcel per second: products and air [kg/s], energy [W].</summary>
internal struct Account
{
    public double Products;
    public double Air;
    public double Energy;

    public void Add(double products, double air, double energy)
    {
        Products += products;
        Air += air;
        Energy += energy;
    }

    /// <summary>Adds <paramref name="m"/> kg/s of a parcel's gas with its enthalpy; negative takes it away.</summary>
    public void Add(in Zone gas, double m) =>
        Add(m * gas.ProductFraction, m * (1 - gas.ProductFraction), m * gas.Enthalpy);

    /// <summary>
    /// Rate of (pressure times volume) of the parcel at fixed volume [W]: (gamma - 1) E + T (d(mR) - (gamma - 1) d(m cv)).
    /// </summary>
    public readonly double Swelling(in Zone zone, GapParameters p)
    {
        double massR = Products * p.Products.R + Air * p.Air.R;
        double massCv = Products * p.Products.Cv + Air * p.Air.Cv;
        return zone.GammaMinusOne * Energy + zone.Temperature * (massR - zone.GammaMinusOne * massCv);
    }
}

/// <summary>The accounts of all parcels, and what leaves them altogether. Every movement is entered on both sides.</summary>
internal struct GapRates
{
    public Account Chamber;
    public Account Hot;
    public Account Cold;
    public Account DeadEnd;

    /// <summary>Net mass that leaves [kg/s].</summary>
    public double MassOut;

    /// <summary>Net energy that leaves as enthalpy and wall heat [W].</summary>
    public double EnergyOut;

    /// <summary>Moves <paramref name="m"/> kg/s of the giving parcel's gas.</summary>
    public static void Move(ref Account from, ref Account to, in Zone gas, double m)
    {
        from.Add(gas, -m);
        to.Add(gas, m);
    }

    /// <summary>Lets <paramref name="m"/> kg/s of a parcel's gas go outside.</summary>
    public void Leave(ref Account from, in Zone gas, double m)
    {
        from.Add(gas, -m);
        MassOut += m;
        EnergyOut += m * gas.Enthalpy;
    }

    /// <summary>Lets <paramref name="m"/> kg/s of outside air in.</summary>
    public void Enter(ref Account to, GapParameters p, double m)
    {
        double h = m * p.Air.Cp * p.OutsideTemperature;
        to.Add(0, m, h);
        MassOut -= m;
        EnergyOut -= h;
    }

    /// <summary>Takes heat [W] from a parcel.</summary>
    public void Cool(ref Account from, double heat)
    {
        from.Energy -= heat;
        EnergyOut += heat;
    }
}
