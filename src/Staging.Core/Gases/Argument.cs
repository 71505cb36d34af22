using System.Runtime.CompilerServices;

namespace Staging.Core.Gases;

/// <summary>The ranges that the dimensionless functions of this floor share.</summary>
internal static class Argument
{
    /// <summary>Least ratio of heat capacities: below it the powers 1/(gamma - 1) lose their digits.</summary>
    public const double MinGamma = 1.01;

    /// <summary>Greatest ratio of heat capacities; gases end at 5/3, the rest is for textbook examples.</summary>
    public const double MaxGamma = 3;

    /// <summary>
    /// Least Mach number of a flow that must not be at rest: its square is still far from the least normal number,
    /// 2e-308.
    /// </summary>
    public const double MinMach = 1e-100;

    /// <summary>Greatest Mach number; far beyond any gas that stays perfect.</summary>
    public const double MaxMach = 1000;

    /// <summary>
    /// ln p/p0 that no Mach number may pass, so that ratios and their reciprocals stay normal numbers: 1e-300.
    /// </summary>
    private const double MinLogPressure = -300 * 2.302585092994046;

    /// <summary>From this gamma upwards p/p0 at Mach 1000 is above 1e-300.</summary>
    private const double GammaOfGreatestMach = 1.013;

    public static double Gamma(double gamma, [CallerArgumentExpression(nameof(gamma))] string name = "") =>
        Guard.In(gamma, MinGamma, MaxGamma, "-", name);

    /// <summary>
    /// Greatest Mach number for a checked gamma: 1000, and for gamma below 1.013 the one at which p/p0 is 1e-300, 432
    /// at gamma 1.01.
    /// </summary>
    public static double MaxMachAt(double gamma)
    {
        if (gamma >= GammaOfGreatestMach)
            return MaxMach;
        double g = gamma - 1;
        return Math.Min(MaxMach, Math.Sqrt(2 / g * NearZero.Expm1(-MinLogPressure * g / gamma)));
    }

    /// <summary>Refuses a gamma outside its range or a Mach number outside [0, <see cref="MaxMachAt"/>].</summary>
    public static double Mach(double mach, double gamma) => Mach(mach, 0, gamma);

    /// <summary>The same for a flow that must not be at rest.</summary>
    public static double MovingMach(double mach, double gamma) => Mach(mach, MinMach, gamma);

    /// <summary>The same for the Mach number ahead of a shock.</summary>
    public static double ShockMach(double mach, double gamma) => Mach(mach, 1, gamma);

    private static double Mach(double mach, double min, double gamma) =>
        Guard.In(mach, min, MaxMachAt(Gamma(gamma, nameof(gamma))), "-", nameof(mach));
}
