namespace Staging.Core.Studies;

/// <summary>
/// Points in the unit cube. Each coordinate follows from seed, case and dimension alone, so that any part can be
/// computed on any machine.
/// </summary>
internal sealed class SampleDesign
{
    private const uint DrawPurpose = 0;
    private const uint JitterPurpose = 1;

    private readonly StrataShuffle shuffle;

    /// <summary>Makes a design.</summary>
    /// <param name="kind">The kind of design.</param>
    /// <param name="points">How many points, 1 to 2^40.</param>
    /// <param name="dimensions">How many coordinates, 1 to 10 000; at most 40 for a low-discrepancy design.</param>
    /// <param name="seed">The seed.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public SampleDesign(DesignKind kind, long points, int dimensions, ulong seed)
    {
        Kind = Guard.Defined(kind, nameof(kind));
        Points = (long)Guard.In((double)points, 1, 1L << 40, "-", nameof(points));
        Dimensions = Guard.In(dimensions, 1, kind == DesignKind.LowDiscrepancy ? SobolPoints.MaxDimensions : 10_000, nameof(dimensions));
        Seed = seed;
        shuffle = new StrataShuffle(points, seed);
    }

    /// <summary>The kind of design.</summary>
    public DesignKind Kind { get; }

    /// <summary>How many points.</summary>
    public long Points { get; }

    /// <summary>How many coordinates.</summary>
    public int Dimensions { get; }

    /// <summary>The seed.</summary>
    public ulong Seed { get; }

    /// <summary>One coordinate of one point.</summary>
    /// <param name="index">The point, from 0.</param>
    /// <param name="dimension">The coordinate, from 0.</param>
    /// <returns>A number between 0 and 1, both excluded [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such point or coordinate.</exception>
    public double At(long index, int dimension)
    {
        Guard.In((double)index, 0, Points - 1, "-", nameof(index));
        return Unit(index, Guard.In(dimension, 0, Dimensions - 1, nameof(dimension)));
    }

    /// <summary>The coordinate, unchecked.</summary>
    internal double Unit(long index, int dimension) => Kind switch
    {
        DesignKind.LatinHypercube =>
            InStratum(shuffle.Of(index, dimension), Philox4x32.Unit(Philox4x32.Bits(Seed, (ulong)index, (uint)dimension, JitterPurpose))),
        DesignKind.LowDiscrepancy => SobolPoints.Shifted(index, dimension, Seed),
        _ => Philox4x32.Unit(Philox4x32.Bits(Seed, (ulong)index, (uint)dimension, DrawPurpose)),
    };

    /// <summary>A position inside a stratum; rounding must not bring it to 1.</summary>
    private double InStratum(long stratum, double place) => Math.Min((stratum + place) / Points, 1 - 1.0 / (1UL << 53));
}
