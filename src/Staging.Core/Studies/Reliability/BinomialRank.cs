using MathNet.Numerics;

namespace Staging.Core.Studies;

/// <summary>Quantiles of the binomial distribution.</summary>
internal static class BinomialRank
{
    /// <summary>The least k with P(hits at most k) of at least <paramref name="probability"/>.</summary>
    public static long Min(long n, double p, double probability)
    {
        long low = -1, high = n;
        while (high - low > 1)
        {
            long middle = low + (high - low) / 2;
            if (AtMost(middle, n, p) >= probability)
                high = middle;
            else
                low = middle;
        }

        return high;
    }

    /// <summary>P(hits at most k) = I_(1-p)(n - k, k + 1) (M. Abramowitz and I. A. Stegun, 1964, 26.5.24).</summary>
    public static double AtMost(long k, long n, double p) => k >= n ? 1 : SpecialFunctions.BetaRegularized(n - k, k + 1, 1 - p);
}
