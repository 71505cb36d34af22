namespace Staging.Core.Gases;

/// <summary>
/// Steady one-dimensional isentropic flow of a perfect gas: state against Mach number, both ways. Dimensionless; the subscript 0 is
/// the stagnation state, the star the sonic state.
/// </summary>
/// <remarks>NACA Report 1135 (Ames Research Staff, 1953), equations 43 to 45 and 80. Mach 0 to 1000, gamma 1.01 to 3.</remarks>
public static class IsentropicFlow
{
    /// <summary>T/T0 = 1/(1 + (gamma - 1)/2 M^2).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation temperature [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TemperatureRatio(double mach, double gamma)
    {
        double M = Argument.Mach(mach);
        return 1 / (1 + (Argument.Gamma(gamma) - 1) / 2 * M * M);
    }

    /// <summary>p/p0 = (T/T0)^(gamma/(gamma - 1)).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation pressure [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureRatio(double mach, double gamma) =>
        Math.Pow(TemperatureRatio(mach, gamma), gamma / (gamma - 1));

    /// <summary>rho/rho0 = (T/T0)^(1/(gamma - 1)).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation density [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DensityRatio(double mach, double gamma) =>
        Math.Pow(TemperatureRatio(mach, gamma), 1 / (gamma - 1));

    /// <summary>Mass flow function mdot sqrt(R T0)/(A p0) = sqrt(gamma) M (T/T0)^((gamma + 1)/(2 (gamma - 1))).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>The function [-]; its maximum, at M = 1, is <see cref="ChokedFlow.CriticalFlowFactor"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MassFlowFunction(double mach, double gamma) =>
        Math.Sqrt(gamma) * mach * Math.Pow(TemperatureRatio(mach, gamma), (gamma + 1) / (2 * (gamma - 1)));

    /// <summary>M from T/T0.</summary>
    /// <param name="temperatureRatio">T/T0 [-], above 1e-6 and at most 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromTemperatureRatio(double temperatureRatio, double gamma)
    {
        double tau = Guard.Above(temperatureRatio, LeastTemperatureRatio, 1, "-", nameof(temperatureRatio));
        return Math.Sqrt(2 / (Argument.Gamma(gamma) - 1) * ((1 - tau) / tau));
    }

    /// <summary>M from p/p0: M^2 = 2/(gamma - 1) ((p/p0)^(-(gamma - 1)/gamma) - 1).</summary>
    /// <param name="pressureRatio">p/p0 [-], above 1e-300 and at most 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromPressureRatio(double pressureRatio, double gamma) =>
        MachFromLogTemperature((Argument.Gamma(gamma) - 1) / gamma * Math.Log(Ratio(pressureRatio, nameof(pressureRatio))), gamma);

    /// <summary>M from rho/rho0: M^2 = 2/(gamma - 1) ((rho/rho0)^(-(gamma - 1)) - 1).</summary>
    /// <param name="densityRatio">rho/rho0 [-], above 1e-300 and at most 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromDensityRatio(double densityRatio, double gamma) =>
        MachFromLogTemperature((Argument.Gamma(gamma) - 1) * Math.Log(Ratio(densityRatio, nameof(densityRatio))), gamma);

    /// <summary>T/T0 at Mach 1000 and gamma 3, the lower end of every inverse.</summary>
    private const double LeastTemperatureRatio = 1e-6;

    private static double Ratio(double ratio, string name) => Guard.Above(ratio, 1e-300, 1, "-", name);

    private static double MachFromLogTemperature(double lnTau, double gamma) =>
        Math.Sqrt(2 / (gamma - 1) * NearZero.Expm1(-lnTau));
}
