namespace Staging.Core.Gases;

/// <content>
/// Mass flow from a reservoir through a throat, choked or not: area * p0 / sqrt(R T0) * <see cref="ThroatMassFlow"/>.
/// </content>
public static partial class IsentropicFlow
{
    /// <summary>Critical pressure ratio p*/p0 = (2/(gamma+1))^(gamma/(gamma-1)).</summary>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>The ratio [-] of throat to stagnation pressure at which the throat is sonic.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double CriticalPressureRatio(double gamma) => Unchecked.CriticalPressureRatio(Argument.Gamma(gamma));

    /// <summary>Critical flow factor C* = sqrt(gamma) (2/(gamma+1))^((gamma+1)/(2(gamma-1))).</summary>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>The mass flow function [-] of a choked throat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double CriticalFlowFactor(double gamma) => Unchecked.CriticalFlowFactor(Argument.Gamma(gamma));

    /// <summary>
    /// Mass flow function psi(r) = sqrt(2 gamma/(gamma-1) (r^(2/gamma) - r^((gamma+1)/gamma))), held at its maximum
    /// below the critical ratio.
    /// </summary>
    /// <param name="pressureRatio">Back pressure over stagnation pressure r [-], 0 to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>psi [-]: zero at r = 1, <see cref="CriticalFlowFactor"/> at and below the critical ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ThroatMassFlow(double pressureRatio, double gamma)
    {
        double r = Math.Max(Guard.In(pressureRatio, 0, 1, "-", nameof(pressureRatio)), CriticalPressureRatio(gamma));
        double x = Math.Pow(r, 1 / gamma);
        return Math.Sqrt(Math.Max(0, 2 * gamma / (gamma - 1) * x * (x - r)));
    }

    /// <summary>The same numbers for inner loops, whose gamma was checked when the gas was made.</summary>
    internal static class Unchecked
    {
        public static double CriticalPressureRatio(double gamma) => Math.Pow(2 / (gamma + 1), gamma / (gamma - 1));

        public static double CriticalFlowFactor(double gamma) =>
            Math.Sqrt(gamma) * Math.Pow(2 / (gamma + 1), (gamma + 1) / (2 * (gamma - 1)));
    }
}
