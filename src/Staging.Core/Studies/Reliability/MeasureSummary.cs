namespace Staging.Core.Studies;

/// <summary>The distribution of a measure over the cases that have it.</summary>
public sealed class MeasureSummary
{
    private readonly MeasureTally tally;

    internal MeasureSummary(ColumnName name, MeasureTally tally)
    {
        (Name, this.tally) = (name, tally);
        if (tally.Count == 0)
            return;
        (Mean, double variance) = ExactSum.Moments(tally.Sum, tally.Squares, tally.Count);
        StandardDeviation = tally.Count > 1 ? Math.Sqrt(variance) : null;
    }

    /// <summary>Name and unit.</summary>
    public ColumnName Name { get; }

    /// <summary>Cases that have this measure.</summary>
    public long Count => tally.Count;

    /// <summary>Mean [Unit]: an exact sum, rounded once; null without cases.</summary>
    public double? Mean { get; }

    /// <summary>Standard deviation of the cases [Unit], with n - 1; from exact sums; null below two cases.</summary>
    public double? StandardDeviation { get; }

    /// <summary>Lowest value [Unit]; null without cases.</summary>
    public double? Min => tally.Count > 0 ? tally.Min : null;

    /// <summary>Highest value [Unit]; null without cases.</summary>
    public double? Max => tally.Count > 0 ? tally.Max : null;

    /// <summary>A percentile, to 0.1 % of its size, and its confidence interval.</summary>
    /// <remarks>
    /// Counts are kept in bins of a thousandth of the value, which merge exactly and need no more memory for more
    /// cases. The interval is that of the order statistics, which assumes no distribution (W. J. Conover, Practical
    /// Nonparametric Statistics, 1999, section 3.2), widened to whole bins.
    /// </remarks>
    /// <param name="percent">Which percentile [%], above 0 and below 100.</param>
    /// <param name="confidence">Confidence of the interval [-], 0.5 to 0.999999.</param>
    /// <returns>The percentile.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="InvalidOperationException">No case has this measure.</exception>
    public Percentile Percentile(double percent, double confidence = 0.95)
    {
        Guard.In(percent, 1e-6, 100 - 1e-6, "%", nameof(percent));
        Guard.In(confidence, 0.5, 0.999999, "-", nameof(confidence));
        if (tally.Count == 0)
            throw new InvalidOperationException($"No case has the measure {Name}.");
        double p = percent / 100, tail = (1 - confidence) / 2;
        long n = tally.Count;
        (double low, double high) = Cut(tally.Bins.OfRank(Rank(p, n)));
        long below = BinomialRank.Min(n, p, tail), above = BinomialRank.Min(n, p, 1 - tail) + 1;
        double from = below < 1 ? tally.Min : Cut(tally.Bins.OfRank(below)).Low;
        double to = above > n ? tally.Max : Cut(tally.Bins.OfRank(above)).High;
        return new Percentile(percent, low / 2 + high / 2, new Interval(from, to, confidence), below >= 1 && above <= n);
    }

    /// <summary>
    /// Count, mean, scatter from two cases on, and the middle ninety per cent, on one line.
    /// </summary>
    /// <returns>For example <c>lit time [ms]: 812 cases, mean 12.1, s 0.8, 5 % 10.9, 95 % 13.4</c>.</returns>
    public override string ToString() => tally.Count == 0
        ? $"{Name}: no case"
        : Invariant.Text($"{Name}: {Count} cases, mean {Mean:G4}{(StandardDeviation is { } s ? Invariant.Text($", s {s:G3}") : "")}, "
            + $"5 % {Percentile(5).Value:G4}, 95 % {Percentile(95).Value:G4}");

    /// <summary>
    /// The least rank at or below which the share p of n cases lies. A product that round-off lifts above a whole
    /// number counts as that number.
    /// </summary>
    private static long Rank(double p, long n) => Math.Clamp((long)Math.Ceiling(p * n * (1 - 1e-12)), 1, n);

    private (double Low, double High) Cut((double Low, double High) bin) => (Math.Max(bin.Low, tally.Min), Math.Min(bin.High, tally.Max));
}
