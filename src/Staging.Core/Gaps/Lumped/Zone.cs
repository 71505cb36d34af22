using Staging.Core.Gases;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// A stirred parcel of products and air: masses [kg] and internal energy [J], and what follows from them.
/// </summary>
internal readonly struct Zone<T>
    where T : struct, IReal<T>
{
    public Zone(T products, T air, T energy, in GasConstants p, in GasConstants a)
    {
        Mass = products + air;
        T massR = products * p.R + air * a.R, massCv = products * p.Cv + air * a.Cv;
        T perMass = 1 / Mass, perCv = 1 / massCv;
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

    private Zone(in Zone<T> like)
    {
        this = like;
        Mass = 0;
        PressureVolume = 0;
    }

    public readonly T Mass;

    /// <summary>Mass fraction of products [-].</summary>
    public readonly T ProductFraction;

    /// <summary>Specific gas constant, by mass fraction [J/(kg K)].</summary>
    public readonly T R;

    /// <summary>Heat capacity at constant volume, by mass fraction [J/(kg K)].</summary>
    public readonly T Cv;

    public readonly T GammaMinusOne;

    public T Gamma => 1 + GammaMinusOne;

    public readonly T Temperature;

    /// <summary>Pressure times volume [J].</summary>
    public readonly T PressureVolume;

    /// <summary>Specific enthalpy [J/kg], zero at 0 K.</summary>
    public T Enthalpy => (Cv + R) * Temperature;

    /// <summary>
    /// Whether there is gas that can flow: what is left of a parcel that a vent has emptied is rounding, and has no
    /// temperature.
    /// </summary>
    public bool IsGas => R.Value > 0 && Temperature.Value > 0 && GammaMinusOne.Value > 0;

    /// <summary>No gas, with the properties of this one: takes part in nothing.</summary>
    public Zone<T> Emptied => new(this);

    public T DensityAt(T pressure) => pressure / (R * Temperature);

    /// <summary>
    /// Rise of (pressure times volume) at fixed volume for each kilogram of another parcel's gas that flows in [J/kg]:
    /// (gamma - 1) h + T (R_in - (gamma - 1) cv_in), from d(pV) = d(U mR/(m cv)).
    /// </summary>
    public T Swelling(in Zone<T> from) =>
        GammaMinusOne * from.Enthalpy + Temperature * (from.R - GammaMinusOne * from.Cv);
}
