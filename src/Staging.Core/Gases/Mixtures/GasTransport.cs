using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// Viscosity, thermal conductivity and Prandtl number of air and, as an estimate, of burn-through gas.
/// </summary>
/// <remarks>
/// Products: Sutherland's law for 46 % carbon dioxide, 27 % nitrogen, 27 % carbon monoxide by mole (the three main
/// gases of equilibrium products), from the pure-gas constants in F. M. White, Viscous Fluid Flow (3rd ed. 2006), mixed
/// by Wilke's rule (1950) and fitted to 0.3 % from 300 to 2400 K. Potassium vapours and steam, a quarter of the gas at
/// flame temperature, are left out: take viscosity as good to 15 % and conductivity as good to 25 %. Suspended
/// particles are not in these numbers; they carry heat capacity, not conduction.
/// </remarks>
public static class GasTransport
{
    private const double AirLow_K = 100, AirHigh_K = 2500;
    private const double ProductLow_K = 250, ProductHigh_K = 3000;

    /// <summary>
    /// Viscosity of air mu = 1.458e-6 T^(3/2)/(T + 110.4) (US Standard Atmosphere 1976, equation 51).
    /// </summary>
    /// <param name="temperature">Temperature [K], 100 to 2500; the source expects growing error at the ends.</param>
    /// <returns>Dynamic viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static DynamicViscosity AirViscosity(Temperature temperature) =>
        DynamicViscosity.FromPascalSeconds(AirViscosity_Pas(Guard.In(temperature, AirLow_K, AirHigh_K, nameof(temperature)).Kelvins));

    /// <summary>
    /// Conductivity of air k = 2.64638e-3 T^(3/2)/(T + 245.4 * 10^(-12/T)) (US Standard Atmosphere 1976, equation 53).
    /// </summary>
    /// <param name="temperature">Temperature [K], 100 to 2500; the source expects growing error at the ends.</param>
    /// <returns>Thermal conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static ThermalConductivity AirConductivity(Temperature temperature) =>
        ThermalConductivity.FromWattsPerMeterKelvin(
            AirConductivity_WmK(Guard.In(temperature, AirLow_K, AirHigh_K, nameof(temperature)).Kelvins));

    /// <summary>
    /// Prandtl number of air mu cp/k with the constant heat capacity of <see cref="PerfectGas.DryAir"/>.
    /// </summary>
    /// <param name="temperature">
    /// Temperature [K], 100 to 2500. The constant heat capacity makes it low by 4 % at 600 K, 12 % at 1000 K, 20 % at
    /// 2000 K and 21 % at 2500 K.
    /// </param>
    /// <returns>Prandtl number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double AirPrandtl(Temperature temperature)
    {
        double T = Guard.In(temperature, AirLow_K, AirHigh_K, nameof(temperature)).Kelvins;
        return AirViscosity_Pas(T) * PerfectGas.DryAir.Constants.Cp / AirConductivity_WmK(T);
    }

    /// <summary>Viscosity of burn-through gas, estimate: 1.50e-5 (T/273)^(3/2) (273 + 174)/(T + 174) Pa s.</summary>
    /// <param name="temperature">Temperature [K], 250 to 3000.</param>
    /// <returns>Dynamic viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static DynamicViscosity ProductViscosity(Temperature temperature) =>
        DynamicViscosity.FromPascalSeconds(
            ProductViscosity_Pas(Guard.In(temperature, ProductLow_K, ProductHigh_K, nameof(temperature)).Kelvins));

    /// <summary>
    /// Prandtl number of a polyatomic gas by the modified Eucken relation k M/(mu cv) = 1.32 + 1.77 R/cv, from which Pr
    /// = gamma/(1.32 + 1.77 (gamma - 1)). It runs a few percent low: 0.69 for gamma 1.4 against 0.71 measured in air.
    /// </summary>
    /// <remarks>
    /// R. C. Reid, J. M. Prausnitz and B. E. Poling, The Properties of Gases and Liquids (4th ed. 1987), as quoted,
    /// with an example, by an open-source library of thermal properties; R. A. Svehla, NASA TR R-132 (1962), is named
    /// as its origin from memory.
    /// </remarks>
    /// <param name="gamma">Ratio of heat capacities of the gas alone, without particles [-], 1.01 to 5/3.</param>
    /// <returns>Prandtl number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double EuckenPrandtl(double gamma) =>
        Guard.In(gamma, Argument.MinGamma, 5.0 / 3.0, "-", nameof(gamma)) / (1.32 + 1.77 * (gamma - 1));

    /// <summary>Conductivity of burn-through gas, estimate: k = mu cp/Pr with <see cref="EuckenPrandtl"/>.</summary>
    /// <param name="gas">The gas alone, without particles.</param>
    /// <param name="temperature">Temperature [K], 250 to 3000.</param>
    /// <returns>Thermal conductivity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static ThermalConductivity ProductConductivity(PerfectGas gas, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(gas);
        double mu = ProductViscosity(temperature).PascalSeconds;
        return ThermalConductivity.FromWattsPerMeterKelvin(mu * gas.Constants.Cp / EuckenPrandtl(gas.HeatCapacityRatio));
    }

    /// <summary>Viscosity of air [Pa s] at T [K], for kernels.</summary>
    internal static double AirViscosity_Pas(double T) => 1.458e-6 * T * Math.Sqrt(T) / (T + 110.4);

    /// <summary>Conductivity of air [W/(m K)] at T [K], for kernels.</summary>
    internal static double AirConductivity_WmK(double T) => 2.64638e-3 * T * Math.Sqrt(T) / (T + 245.4 * Math.Pow(10, -12 / T));

    /// <summary>Viscosity of burn-through gas [Pa s] at T [K], for kernels.</summary>
    internal static double ProductViscosity_Pas(double T)
    {
        const double mu0 = 1.50e-5, T0 = 273, S = 174;
        double x = T / T0;
        return mu0 * x * Math.Sqrt(x) * (T0 + S) / (T + S);
    }
}
