using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>
/// A stirred parcel of products and air: masses [kg] and internal energy [J], and what follows from them.
/// </summary>
internal readonly struct Zone
{
    public Zone(double products, double air, double energy, in GasConstants p, in GasConstants a)
    {
        Mass = products + air;
        double massR = products * p.R + air * a.R, massCv = products * p.Cv + air * a.Cv;
        double perMass = 1 / Mass, perCv = 1 / massCv;
        ProductFraction = products * perMass;
        R = massR * perMass;
        Cv = massCv * perMass;
        GammaMinusOne = massR * perCv;
        Temperature = energy * perCv;
        PressureVolume = massR * Temperature;
    }

    /// <summary>Still air: what an opening sees of the outside.</summary>
    public Zone(in GasConstants air, double temperature)
    {
        R = air.R;
        Cv = air.Cv;
        GammaMinusOne = air.Gamma - 1;
        Temperature = temperature;
    }

    private Zone(in Zone like)
    {
        this = like;
        Mass = 0;
        PressureVolume = 0;
    }

    public double Mass { get; }

    /// <summary>Mass fraction of products [-].</summary>
    public double ProductFraction { get; }

    /// <summary>Specific gas constant, by mass fraction [J/(kg K)].</summary>
    public double R { get; }

    /// <summary>Heat capacity at constant volume, by mass fraction [J/(kg K)].</summary>
    public double Cv { get; }

    public double GammaMinusOne { get; }

    public double Gamma => 1 + GammaMinusOne;

    public double Temperature { get; }

    /// <summary>Pressure times volume [J].</summary>
    public double PressureVolume { get; }

    /// <summary>Specific enthalpy [J/kg], zero at 0 K.</summary>
    public double Enthalpy => (Cv + R) * Temperature;

    /// <summary>
    /// Whether there is gas that can flow: what is left of a parcel that a vent has emptied is rounding, and has no
    /// temperature.
    /// </summary>
    public bool IsGas => R > 0 && Temperature > 0 && GammaMinusOne > 0;

    /// <summary>No gas, with the properties of this one: takes part in nothing.</summary>
    public Zone Emptied => new(this);

    public double DensityAt(double pressure) => pressure / (R * Temperature);

    /// <summary>
    /// Rise of (pressure times volume) at fixed volume for each kilogram of another parcel's gas that flows in [J/kg]:
    /// (gamma - 1) h + T (R_in - (gamma - 1) cv_in), from d(pV) = d(U mR/(m cv)).
    /// </summary>
    public double Swelling(in Zone from) =>
        GammaMinusOne * from.Enthalpy + Temperature * (from.R - GammaMinusOne * from.Cv);
}
