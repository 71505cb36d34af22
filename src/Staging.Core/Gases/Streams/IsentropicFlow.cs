namespace Staging.Core.Gases;

/// <summary>
/// Steady one-dimensional isentropic flow of a perfect gas: state against Mach number, both ways. Dimensionless; the
/// subscript 0 is the stagnation state, the star the sonic state.
/// </summary>
/// <remarks>
/// NACA Report 1135 (Ames Research Staff, 1953), equations 43 to 45 and 80. Gamma 1.01 to 3, Mach 0 to 1000; for gamma
/// below 1.013 only to where p/p0 is 1e-300 (Mach 432 at gamma 1.01), so that every ratio is a normal number. The
/// inverses take the ratios of that range.
/// </remarks>
public static partial class IsentropicFlow
{
    /// <summary>T/T0 = 1/(1 + (gamma - 1)/2 M^2).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation temperature [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TemperatureRatio(double mach, double gamma)
    {
        double M = Argument.Mach(mach, gamma);
        return 1 / (1 + (gamma - 1) / 2 * M * M);
    }

    /// <summary>p/p0 = (T/T0)^(gamma/(gamma - 1)).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation pressure [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureRatio(double mach, double gamma) =>
        Math.Pow(TemperatureRatio(mach, gamma), gamma / (gamma - 1));

    /// <summary>rho/rho0 = (T/T0)^(1/(gamma - 1)).</summary>
    /// <param name="mach">Mach number M [-], 0 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Static over stagnation density [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DensityRatio(double mach, double gamma) =>
        Math.Pow(TemperatureRatio(mach, gamma), 1 / (gamma - 1));

    /// <summary>
    /// Mass flow function mdot sqrt(R T0)/(A p0) = sqrt(gamma) M (T/T0)^((gamma + 1)/(2 (gamma - 1))).
    /// </summary>
    /// <param name="mach">Mach number M [-], 0 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>The function [-]; its maximum, at M = 1, is <see cref="IsentropicFlow.CriticalFlowFactor"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MassFlowFunction(double mach, double gamma) =>
        Math.Sqrt(gamma) * mach * Math.Pow(TemperatureRatio(mach, gamma), (gamma + 1) / (2 * (gamma - 1)));

    /// <summary>M from T/T0.</summary>
    /// <param name="temperatureRatio">T/T0 [-], <see cref="TemperatureRatio"/> at the greatest Mach number to
    /// 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromTemperatureRatio(double temperatureRatio, double gamma)
    {
        double fastest = Fastest(gamma);
        double tau = Guard.In(temperatureRatio, TemperatureRatio(fastest, gamma), 1, "-", nameof(temperatureRatio));
        return Math.Min(fastest, Math.Sqrt(2 / (gamma - 1) * ((1 - tau) / tau)));
    }

    /// <summary>M from p/p0: M^2 = 2/(gamma - 1) ((p/p0)^(-(gamma - 1)/gamma) - 1).</summary>
    /// <param name="pressureRatio">p/p0 [-], <see cref="PressureRatio"/> at the greatest Mach number to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromPressureRatio(double pressureRatio, double gamma)
    {
        double fastest = Fastest(gamma);
        double r = Guard.In(pressureRatio, PressureRatio(fastest, gamma), 1, "-", nameof(pressureRatio));
        return Math.Min(fastest, MachFromLogTemperature((gamma - 1) / gamma * Math.Log(r), gamma));
    }

    /// <summary>M from rho/rho0: M^2 = 2/(gamma - 1) ((rho/rho0)^(-(gamma - 1)) - 1).</summary>
    /// <param name="densityRatio">rho/rho0 [-], <see cref="DensityRatio"/> at the greatest Mach number to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromDensityRatio(double densityRatio, double gamma)
    {
        double fastest = Fastest(gamma);
        double r = Guard.In(densityRatio, DensityRatio(fastest, gamma), 1, "-", nameof(densityRatio));
        return Math.Min(fastest, MachFromLogTemperature((gamma - 1) * Math.Log(r), gamma));
    }

    private static double Fastest(double gamma) => Argument.MaxMachAt(Argument.Gamma(gamma));

    private static double MachFromLogTemperature(double lnTau, double gamma) =>
        Math.Sqrt(2 / (gamma - 1) * NearZero.Expm1(-lnTau));
}
