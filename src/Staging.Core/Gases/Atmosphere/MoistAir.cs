using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// Air with water vapour, by the CIPM-2007 equation: A. Picard, R. S. Davis, M. Glaeser and K. Fujii, "Revised formula
/// for the density of moist air (CIPM-2007)", Metrologia 45 (2008) 149-155, with the reference 400 micromole/mole of
/// carbon dioxide.
/// </summary>
/// <remarks>
/// The source vouches for 15 to 27 degrees Celsius and 600 to 1100 hPa with a relative uncertainty of 22 parts in a
/// million. The functions go on outside that window; there the vapour pressure stays good to about a percent between
/// -20 and 50 degrees Celsius. Air that would hold more vapour than its pressure allows (only below 18 kPa, when hot)
/// is refused.
/// </remarks>
internal static class MoistAir
{
    /// <summary>
    /// 1 - Mv/Ma [-]: how much lighter a mole of vapour is than a mole of dry air (CIPM-2007: 18.01528 and 28.96546
    /// g/mol).
    /// </summary>
    internal const double Lightness = 1 - VapourMolarMass / AirMolarMass;

    private const double AirMolarMass = 28.96546e-3;
    private const double VapourMolarMass = 18.01528e-3;
    private const double CipmGasConstant = 8.314472;
    private const double IcePoint_K = 273.15;

    // CIPM-2007, appendix A1.1: p_sv = 1 Pa exp(A T^2 + B T + C + D/T).
    private const double A = 1.2378847e-5;
    private const double B = -1.9121316e-2;
    private const double C = 33.93711047;
    private const double D = -6.3431645e3;

    /// <summary>Mole fraction of water vapour x_v = h f(p, t) p_sv(T)/p (CIPM-2007, appendix A1.2).</summary>
    /// <param name="pressure">Absolute pressure [Pa], 10 kPa to 200 kPa.</param>
    /// <param name="temperature">Temperature [K], 220 to 330.</param>
    /// <param name="relativeHumidity">Relative humidity h over liquid water [-], 0 to 1.</param>
    /// <returns>x_v [-], at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or a humidity that would make x_v
    /// exceed 1.</exception>
    public static double VapourMoleFraction(Pressure pressure, Temperature temperature, double relativeHumidity)
    {
        (double p, double T) = Checked(pressure, temperature);
        double t = T - IcePoint_K;
        double f = 1.00062 + 3.14e-8 * p + 5.6e-7 * t * t;
        double saturated = f * Math.Exp(A * T * T + B * T + C + D / T);
        double x_v = Guard.In(relativeHumidity, 0, 1, "-", nameof(relativeHumidity)) * saturated / p;
        return x_v <= 1
            ? x_v
            : throw new ArgumentOutOfRangeException(nameof(relativeHumidity), relativeHumidity,
                Invariant.Text($"relativeHumidity is {relativeHumidity:G4} at pressure {p:G6} Pa and temperature {T:G6} K, where "
                    + $"saturated vapour alone has {saturated:G6} Pa; it must be between 0 and {p / saturated:G4} there."));
    }

    /// <summary>Density rho = p Ma/(Z R T) (1 - x_v (1 - Mv/Ma)) (CIPM-2007, equation 1).</summary>
    /// <param name="pressure">Absolute pressure [Pa], 10 kPa to 200 kPa.</param>
    /// <param name="temperature">Temperature [K], 220 to 330.</param>
    /// <param name="relativeHumidity">Relative humidity over liquid water [-], 0 to 1.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or a humidity that would make the
    /// vapour fraction exceed 1.</exception>
    public static Density DensityAt(Pressure pressure, Temperature temperature, double relativeHumidity)
    {
        double x = VapourMoleFraction(pressure, temperature, relativeHumidity);
        (double p, double T) = Checked(pressure, temperature);
        return Density.FromKilogramsPerCubicMeter(
            p * AirMolarMass / (Compressibility(p, T, x) * CipmGasConstant * T) * (1 - Lightness * x));
    }

    /// <summary>
    /// Ratio of heat capacities [-] of the mixture with cv = 5/2 R for air and 3.04 R for vapour, per mole.
    /// </summary>
    /// <remarks>Vapour: cp = 33.6 J/(mol K) at 300 K from the NASA seven-coefficient fit for H2O.</remarks>
    internal static double Gamma(double x) => 1 + 1 / (2.5 * (1 - x) + 3.04 * x);

    /// <summary>
    /// d(ln p_sv)/d(ln T) [-]: the power of temperature that the saturation pressure follows around T.
    /// </summary>
    internal static double SaturationExponent(double T) => T * (2 * A * T + B - D / (T * T));

    /// <summary>Compressibility factor Z [-] (CIPM-2007, appendix A1.4).</summary>
    private static double Compressibility(double p, double T, double x)
    {
        const double a0 = 1.58123e-6, a1 = -2.9331e-8, a2 = 1.1043e-10;
        const double b0 = 5.707e-6, b1 = -2.051e-8;
        const double c0 = 1.9898e-4, c1 = -2.376e-6;
        const double d = 1.83e-11, e = -0.765e-8;
        double t = T - IcePoint_K;
        double pT = p / T;
        return 1 - pT * (a0 + a1 * t + a2 * t * t + (b0 + b1 * t) * x + (c0 + c1 * t) * x * x) + pT * pT * (d + e * x * x);
    }

    private static (double Pressure_Pa, double Temperature_K) Checked(Pressure pressure, Temperature temperature) =>
        (Guard.In(pressure, 1e4, 2e5, nameof(pressure)).Pascals, Guard.In(temperature, 220, 330, nameof(temperature)).Kelvins);
}
