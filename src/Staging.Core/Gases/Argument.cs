using System.Runtime.CompilerServices;

namespace Staging.Core.Gases;

/// <summary>The ranges that the dimensionless functions of this floor share.</summary>
internal static class Argument
{
    /// <summary>Least ratio of heat capacities: below it the powers 1/(gamma - 1) lose their digits.</summary>
    public const double LeastGamma = 1.01;

    /// <summary>Greatest ratio of heat capacities; gases end at 5/3, the rest is for textbook examples.</summary>
    public const double GreatestGamma = 3;

    /// <summary>Greatest Mach number; far beyond any gas that stays perfect.</summary>
    public const double GreatestMach = 1000;

    public static double Gamma(double gamma, [CallerArgumentExpression(nameof(gamma))] string name = "") =>
        Guard.In(gamma, LeastGamma, GreatestGamma, "-", name);

    public static double Mach(double mach, [CallerArgumentExpression(nameof(mach))] string name = "") =>
        Guard.In(mach, 0, GreatestMach, "-", name);

    public static double ShockMach(double mach, [CallerArgumentExpression(nameof(mach))] string name = "") =>
        Guard.In(mach, 1, GreatestMach, "-", name);
}
