namespace Staging.Core.Studies;

/// <summary>One measure: count, exact sums, ends and bins.</summary>
internal sealed class MeasureTally
{
    public long Count { get; set; }

    public double Min { get; set; } = double.MaxValue;

    public double Max { get; set; } = double.MinValue;

    public ExactSum Sum { get; set; } = new();

    public ExactSum Squares { get; set; } = new();

    public BinnedCounts Bins { get; } = new();

    /// <summary>A contradiction among these numbers, in words; null where they are consistent.</summary>
    public string? Flaw()
    {
        long[] bins = [.. Bins.Sorted().Select(b => b.Key)];
        bool endsFit = Count == 0
            ? (Min, Max) == (double.MaxValue, double.MinValue)
            : Min <= Max && (BinnedCounts.Bin(Min), BinnedCounts.Bin(Max)) == (bins[0], bins[^1]);
        if (!endsFit)
            return $"the ends of {Count} values do not fit their bins";
        return ExactSum.ArePossible(Sum, Squares, Count, Min, Max) ? null : $"{Count} values between these ends do not have these sums";
    }

    public void Add(double value)
    {
        Count++;
        Min = Math.Min(Min, value);
        Max = Math.Max(Max, value);
        Sum.Add(value);
        Squares.AddSquare(value);
        Bins.Add(value);
    }

    public void Add(MeasureTally other)
    {
        Count += other.Count;
        Min = Math.Min(Min, other.Min);
        Max = Math.Max(Max, other.Max);
        Sum.Add(other.Sum);
        Squares.Add(other.Squares);
        Bins.Add(other.Bins);
    }
}
