namespace Staging.Core.Gases;

/// <summary>
/// Viscosity and thermal conductivity of air in SI numbers, 100 to 2500 K; the source expects growing error at the
/// ends.
/// </summary>
internal static class AirTransport
{
    /// <summary>
    /// Viscosity mu = 1.458e-6 T^(3/2)/(T + 110.4) [Pa s] at T [K] (US Standard Atmosphere 1976, equation 51).
    /// </summary>
    public static double Viscosity(double T) => 1.458e-6 * T * Math.Sqrt(T) / (T + 110.4);

    /// <summary>
    /// Conductivity k = 2.64638e-3 T^(3/2)/(T + 245.4 * 10^(-12/T)) [W/(m K)] at T [K] (same source, equation 53).
    /// </summary>
    public static double Conductivity(double T) => 2.64638e-3 * T * Math.Sqrt(T) / (T + 245.4 * Math.Pow(10, -12 / T));
}
