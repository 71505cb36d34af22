namespace Staging.Core.Studies;

/// <summary>One measure: count, exact sums, ends and bins.</summary>
internal sealed class MeasureTally
{
    public long Count { get; set; }

    public double Least { get; set; } = double.MaxValue;

    public double Greatest { get; set; } = double.MinValue;

    public ExactSum Sum { get; set; } = new();

    public ExactSum Squares { get; set; } = new();

    public BinnedCounts Bins { get; } = new();

    /// <summary>What no values can have, in words; null where these numbers fit together.</summary>
    public string? Flaw()
    {
        long[] bins = [.. Bins.Sorted().Select(b => b.Key)];
        bool endsFit = Count == 0
            ? (Least, Greatest) == (double.MaxValue, double.MinValue)
            : Least <= Greatest && (BinnedCounts.Bin(Least), BinnedCounts.Bin(Greatest)) == (bins[0], bins[^1]);
        if (!endsFit)
            return $"the ends of {Count} values do not fit their bins";
        return ExactSum.ArePossible(Sum, Squares, Count, Least, Greatest) ? null : $"{Count} values between these ends do not have these sums";
    }

    public void Add(double value)
    {
        Count++;
        Least = Math.Min(Least, value);
        Greatest = Math.Max(Greatest, value);
        Sum.Add(value);
        Squares.AddSquare(value);
        Bins.Add(value);
    }

    public void Add(MeasureTally other)
    {
        Count += other.Count;
        Least = Math.Min(Least, other.Least);
        Greatest = Math.Max(Greatest, other.Greatest);
        Sum.Add(other.Sum);
        Squares.Add(other.Squares);
        Bins.Add(other.Bins);
    }
}
