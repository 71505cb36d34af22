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
