using MathNet.Numerics;

namespace Staging.Core.Studies;

/// <summary>Quantiles of the beta and Student distributions, by halving the interval that holds them.</summary>
internal static class BetaTable
{
    /// <summary>Halvings: enough for every bit of a double in (0, 1) above 2^-200.</summary>
    private const int Halvings = 256;

    public static double Quantile(double a, double b, double p)
    {
        double low = 0, high = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = low + (high - low) / 2;
            if (middle <= low || middle >= high)
                break;
            if (SpecialFunctions.BetaRegularized(a, b, middle) < p)
                low = middle;
            else
                high = middle;
        }

        return low + (high - low) / 2;
    }

    /// <summary>
    /// Two-sided factor of Student's distribution: of t(freedom), a share <paramref name="confidence"/> lies between
    /// minus and plus this.
    /// </summary>
    public static double StudentFactor(double freedom, double confidence)
    {
        // P(|T| > t) = I_x(f/2, 1/2) with x = f/(f + t^2) (M. Abramowitz and I. A. Stegun, 1964, 26.7.1).
        double x = Quantile(freedom / 2, 0.5, 1 - confidence);
        return Math.Sqrt(freedom * (1 - x) / x);
    }
}
