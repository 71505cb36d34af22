namespace Staging.Core.Studies;

/// <summary>
/// Counts of values in fixed bins of a thousandth of their size: percentiles to 0.1 %, exact to merge, of a size that
/// does not grow with the number of values.
/// </summary>
/// <remarks>
/// A bin is a double without its lowest 42 bits: 1024 bins to a factor of two, the same bins in every study. Values of
/// one sign between 1 and 1000 need at most 10 300 of them. The idea of bins of fixed relative width is that of C.
/// Masson, J. E. Rim and H. K. Lee, "DDSketch", PVLDB 12 (2019) 2195-2205.
/// </remarks>
internal sealed class BinnedCounts
{
    private const int Dropped = 42;

    private readonly Dictionary<long, long> counts = [];

    public int Bins => counts.Count;

    public void Add(double value) => Add(Bin(value), 1);

    public void Add(long bin, long count) => counts[bin] = counts.GetValueOrDefault(bin) + count;

    public void Add(BinnedCounts other)
    {
        foreach ((long bin, long count) in other.counts)
            Add(bin, count);
    }

    public IEnumerable<KeyValuePair<long, long>> Sorted() => counts.OrderBy(c => c.Key);

    /// <summary>Both ends of the bin that holds the value of a rank, 1 for the lowest.</summary>
    public (double Low, double High) OfRank(long rank)
    {
        long seen = 0;
        foreach ((long bin, long count) in Sorted())
        {
            seen += count;
            if (seen >= rank)
                return Ends(bin);
        }

        throw new InvalidOperationException($"There are {seen} values, none of rank {rank}.");
    }

    /// <summary>The number of a bin; bins rise with the values in them. Zero has its own.</summary>
    public static long Bin(double value)
    {
        long bin = (BitConverter.DoubleToInt64Bits(Math.Abs(value)) >> Dropped) + 1;
        return value == 0 ? 0 : value > 0 ? bin : -bin;
    }

    private static (double Low, double High) Ends(long bin)
    {
        if (bin == 0)
            return (0, 0);
        long magnitude = Math.Abs(bin) - 1;
        double near = BitConverter.Int64BitsToDouble(magnitude << Dropped),
            far = BitConverter.Int64BitsToDouble((magnitude + 1) << Dropped);
        return bin > 0 ? (near, far) : (-far, -near);
    }
}
