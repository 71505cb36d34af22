namespace Staging.Core.Studies;

/// <summary>The number of independent cases with a certain outcome.</summary>
public sealed record Proportion
{
    /// <summary>Makes a proportion.</summary>
    /// <param name="hits">Cases that came out so, 0 to the number of cases.</param>
    /// <param name="cases">Cases in all, 1 to 2^40.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public Proportion(long hits, long cases)
    {
        Cases = (long)Guard.In((double)cases, 1, 1L << 40, "-", nameof(cases));
        Hits = (long)Guard.In((double)hits, 0, cases, "-", nameof(hits));
    }

    /// <summary>Cases with that outcome.</summary>
    public long Hits { get; }

    /// <summary>Cases in all.</summary>
    public long Cases { get; }

    /// <summary>The share of hits [-].</summary>
    public double Estimate => (double)Hits / Cases;

    /// <summary>The score interval: near its confidence on average, and sensible at 0 and 1.</summary>
    /// <remarks>E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209-212.</remarks>
    /// <param name="confidence">The confidence [-], 0.5 to 0.999999.</param>
    /// <returns>The interval of the probability [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Interval Wilson(double confidence = 0.95) => ScoreInterval.Of(Estimate, Cases, Checked(confidence));

    /// <summary>
    /// The exact interval: it contains the true value at least as often as its confidence states, whatever that value
    /// is.
    /// </summary>
    /// <remarks>
    /// C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413; ends as quantiles of the beta distribution.
    /// </remarks>
    /// <param name="confidence">The confidence [-], 0.5 to 0.999999.</param>
    /// <returns>The interval of the probability [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Interval ClopperPearson(double confidence = 0.95)
    {
        double tail = Tail(confidence);
        double low = Hits == 0 ? 0 : BetaTable.Quantile(Hits, Cases - Hits + 1, tail);
        double high = Hits == Cases ? 1 : BetaTable.Quantile(Hits + 1, Cases - Hits, 1 - tail);
        return new Interval(low, high, confidence);
    }

    /// <summary>Share, counts and the exact interval at 95 %.</summary>
    /// <returns>For example <c>0.8300 (83 of 100; 0.7418 to 0.8977 at 95 %)</c>.</returns>
    public override string ToString() => Invariant.Text($"{Estimate:F4} ({Hits} of {Cases}; {ClopperPearson()})");

    private static double Tail(double confidence) => (1 - Checked(confidence)) / 2;

    private static double Checked(double confidence) => Guard.In(confidence, 0.5, 0.999999, "-", nameof(confidence));
}
