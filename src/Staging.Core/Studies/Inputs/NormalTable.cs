using MathNet.Numerics;

namespace Staging.Core.Studies;

/// <summary>The standard normal distribution and its inverse.</summary>
internal static class NormalTable
{
    private static readonly double RootTwo = Math.Sqrt(2);

    public static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / RootTwo);

    public static double Quantile(double p) => -RootTwo * SpecialFunctions.ErfcInv(2 * p);

    /// <summary>
    /// Quantile of the part between a and b. Where both lie in the upper tail it is mirrored, because differences of
    /// numbers near 1 cancel.
    /// </summary>
    public static double QuantileBetween(double a, double b, double u)
    {
        if (a > 0)
            return -QuantileBetween(-b, -a, 1 - u);
        double below = Below(a);
        return Quantile(below + u * (Below(b) - below));
    }
}
