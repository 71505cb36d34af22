namespace Staging.Core.Studies;

/// <summary>The score interval of a probability.</summary>
internal static class ScoreInterval
{
    /// <summary>
    /// Of a share p among n cases, which need not be a whole number (E. B. Wilson, J. Am. Stat. Assoc. 22 (1927)
    /// 209-212).
    /// </summary>
    public static Interval Of(double p, double n, double confidence)
    {
        double z = NormalTable.Quantile(1 - (1 - confidence) / 2);
        double centre = p + z * z / (2 * n), reach = z * Math.Sqrt(p * (1 - p) / n + z * z / (4 * n * n)), over = 1 + z * z / n;
        return new Interval(p <= 0 ? 0 : (centre - reach) / over, p >= 1 ? 1 : (centre + reach) / over, confidence);
    }
}
