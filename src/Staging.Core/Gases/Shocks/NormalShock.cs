namespace Staging.Core.Gases;

/// <summary>
/// Normal shock in a perfect gas: state behind against the Mach number ahead, in the frame of the shock. Dimensionless;
/// 1 is ahead of the shock, 2 behind. Stagnation temperature is the same on both sides.
/// </summary>
/// <remarks>
/// NACA Report 1135 (Ames Research Staff, 1953), section on normal shock waves, and H. W. Liepmann and A. Roshko,
/// Elements of Gasdynamics (1957), section 2.13. Gamma 1.01 to 3, Mach 1 to 1000; for gamma below 1.013 the range of
/// the Mach number ends where that of <see cref="IsentropicFlow"/> does, so that every ratio is a normal number.
/// </remarks>
public static partial class NormalShock
{
    /// <summary>M2^2 = (1 + (gamma - 1)/2 M1^2)/(gamma M1^2 - (gamma - 1)/2).</summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number behind M2 [-], at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DownstreamMach(double mach, double gamma)
    {
        double m = Square(mach, gamma);
        return Math.Sqrt((1 + (gamma - 1) / 2 * m) / (gamma * m - (gamma - 1) / 2));
    }

    /// <summary>p2/p1 = 1 + 2 gamma/(gamma + 1) (M1^2 - 1).</summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Pressure ratio [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureRatio(double mach, double gamma) => 1 + 2 * gamma / (gamma + 1) * (Square(mach, gamma) - 1);

    /// <summary>rho2/rho1 = (gamma + 1) M1^2/((gamma - 1) M1^2 + 2).</summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Density ratio [-], 1 or more and below (gamma + 1)/(gamma - 1).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DensityRatio(double mach, double gamma)
    {
        double m = Square(mach, gamma);
        return (gamma + 1) * m / ((gamma - 1) * m + 2);
    }

    /// <summary>T2/T1, the pressure ratio over the density ratio.</summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Temperature ratio [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TemperatureRatio(double mach, double gamma) => PressureRatio(mach, gamma) / DensityRatio(mach, gamma);

    /// <summary>Stagnation pressure behind over ahead, p02/p01 = exp(-(s2 - s1)/R).</summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Ratio [-], at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double StagnationPressureRatio(double mach, double gamma) => Math.Exp(-EntropyRise(mach, gamma));

    /// <summary>
    /// Pitot pressure over static pressure ahead, p02/p1 = ((gamma + 1)/2 M1^2)^(gamma/(gamma - 1)) (2 gamma/(gamma +
    /// 1) M1^2 - (gamma - 1)/(gamma + 1))^(-1/(gamma - 1)) (Rayleigh's formula).
    /// </summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Ratio [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PitotRatio(double mach, double gamma)
    {
        double m = Square(mach, gamma);
        return Math.Exp((gamma * Math.Log((gamma + 1) / 2 * m) - Math.Log((2 * gamma * m - (gamma - 1)) / (gamma + 1))) / (gamma - 1));
    }

    /// <summary>
    /// Entropy rise (s2 - s1)/R = (ln(p2/p1) - gamma ln(rho2/rho1))/(gamma - 1): of third order in M1^2 - 1 for weak
    /// shocks, and given to full relative accuracy there too.
    /// </summary>
    /// <param name="mach">Mach number ahead M1 [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Entropy rise over R [-], never negative.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double EntropyRise(double mach, double gamma)
    {
        Square(mach, gamma);
        double z = (mach - 1) * (mach + 1);
        double a = 2 * gamma / (gamma + 1);
        double b = (gamma - 1) / (gamma + 1);
        double sum = z < WeakShock
            ? WeakShockSeries(z, a, b, gamma)
            : NearZero.Log1p(a * z) - gamma * (NearZero.Log1p(z) - NearZero.Log1p(b * z));
        return sum / (gamma - 1);
    }

    /// <summary>M1 from p2/p1: M1^2 = 1 + (gamma + 1)/(2 gamma) (p2/p1 - 1).</summary>
    /// <param name="pressureRatio">p2/p1 [-], 1 to <see cref="PressureRatio"/> at the greatest Mach number.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number ahead [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromPressureRatio(double pressureRatio, double gamma) =>
        Math.Min(Argument.MaxMachAt(gamma), Math.Sqrt(1 + (gamma + 1) / (2 * gamma) * (ShockPressure(pressureRatio, gamma) - 1)));

    /// <summary>
    /// Density ratio on the Rankine-Hugoniot curve, rho2/rho1 = ((gamma + 1) p2/p1 + gamma - 1)/((gamma - 1) p2/p1 +
    /// gamma + 1).
    /// </summary>
    /// <param name="pressureRatio">p2/p1 [-], 1 to <see cref="PressureRatio"/> at the greatest Mach number.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Density ratio [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double HugoniotDensityRatio(double pressureRatio, double gamma)
    {
        double P = ShockPressure(pressureRatio, gamma);
        return ((gamma + 1) * P + gamma - 1) / ((gamma - 1) * P + gamma + 1);
    }

    /// <summary>
    /// M1^2 - 1 below which the entropy rise is summed as a series, where the logarithms would cancel.
    /// </summary>
    private const double WeakShock = 0.05;

    private static double Square(double mach, double gamma) => Argument.ShockMach(mach, gamma) * mach;

    private static double ShockPressure(double pressureRatio, double gamma) =>
        Guard.In(pressureRatio, 1, PressureRatio(Argument.MaxMachAt(Argument.Gamma(gamma)), gamma), "-", nameof(pressureRatio));

    /// <summary>
    /// ln(1 + a z) - gamma ln(1 + z) + gamma ln(1 + b z): the first two powers of z cancel exactly and are left out.
    /// </summary>
    private static double WeakShockSeries(double z, double a, double b, double gamma)
    {
        const int LastPower = 16;
        (double an, double bn, double zn, double sum) = (a * a, b * b, z * z, 0);
        for (int n = 3; n <= LastPower; n++)
        {
            (an, bn, zn) = (an * a, bn * b, -zn * z);
            sum -= zn / n * (an - gamma + gamma * bn);
        }

        return sum;
    }
}
