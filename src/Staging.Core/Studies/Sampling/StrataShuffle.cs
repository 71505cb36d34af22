using System.Numerics;

namespace Staging.Core.Studies;

/// <summary>
/// A random permutation of 0 ... n-1 for each dimension that is evaluated element by element and never stored: a
/// Feistel network with Philox as its round function, iterated until it lands inside the range.
/// </summary>
/// <remarks>
/// M. Luby and C. Rackoff, SIAM J. Comput. 17 (1988) 373-386 (the network); J. Black and P. Rogaway, "Ciphers with
/// arbitrary finite domains", CT-RSA 2002, section 4 (the walk). The domain is at most four times n, so that a walk
/// takes four steps or fewer on average.
/// </remarks>
internal readonly struct StrataShuffle
{
    private const uint Purpose = 2;

    /// <summary>
    /// Four rounds suffice for large halves; small ones need more, because a round on halves of a bit or two selects
    /// among few permutations.
    /// </summary>
    private const int Rounds = 8, RoundsOfSmallHalves = 24, SmallHalf = 4;

    /// <summary>The round after the last has no network: its number gives the coin of <see cref="Swapped"/>.</summary>
    private const uint CoinRound = RoundsOfSmallHalves;

    private readonly long count;
    private readonly ulong seed;
    private readonly int half, rounds;

    public StrataShuffle(long count, ulong seed)
    {
        (this.count, this.seed) = (count, seed);
        half = Math.Max(1, (BitOperations.Log2((ulong)Math.Max(count - 1, 1)) + 2) / 2);
        rounds = half <= SmallHalf ? RoundsOfSmallHalves : Rounds;
    }

    public long Of(long index, int dimension)
    {
        ulong place = (ulong)index;
        do
            place = Network(place, (uint)dimension);
        while (place >= (ulong)count);
        return (long)place;
    }

    private ulong Network(ulong place, uint dimension)
    {
        uint mask = (1u << half) - 1;
        uint left = (uint)(place >> half), right = (uint)place & mask;
        for (uint round = 0; round < (uint)rounds; round++)
        {
            (uint x, _, _, _) = Philox4x32.Block(right, round, dimension, Purpose, (uint)seed, (uint)(seed >> 32));
            (left, right) = (right, left ^ (x & mask));
        }

        return Swapped(((ulong)left << half) | right, dimension);
    }

    /// <summary>
    /// On halves of two bits or more a network makes only even permutations (S. Even and O. Goldreich, IEEE Trans.
    /// Inf. Theory 29 (1983) 863-865), which shows with few strata: of five, even orders would occur a sixth more often
    /// than odd ones. A coin that swaps the first two elements makes both equally likely.
    /// </summary>
    private ulong Swapped(ulong place, uint dimension)
    {
        if (half > SmallHalf || place > 1)
            return place;
        (uint coin, _, _, _) = Philox4x32.Block(0, CoinRound, dimension, Purpose, (uint)seed, (uint)(seed >> 32));
        return place ^ (coin & 1);
    }
}
