using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Sobol's sequence, point by point, with 52 bits, shifted by random bits of the seed.</summary>
/// <remarks>
/// I. M. Sobol, USSR Comput. Math. Math. Phys. 7 (1967) 86-112; in the Gray-code order of I. A. Antonov and V. M.
/// Saleev (1979), as given by S. Joe and F. Y. Kuo, ACM Trans. Math. Softw. 29 (2003) 49-57. The digital shift adds the
/// same random bits, without carry, to every point of a dimension: the net properties stay, and the origin does not
/// come out as 0.
/// </remarks>
internal static class SobolPoints
{
    private const uint ShiftPurpose = 3;
    private const int Bits = 52;
    private const ulong Mask = (1UL << Bits) - 1;

    /// <summary>Direction numbers of all dimensions, one after the other, as 52-bit fractions.</summary>
    private static readonly ImmutableArray<ulong> Directions = [.. Unity(), .. SobolTable.Rows.SelectMany(Recur)];

    public static int MaxDimensions => Directions.Length / Bits;

    public static double Shifted(long index, int dimension, ulong seed) =>
        Philox4x32.Unit((Word(index, dimension) ^ (Philox4x32.Bits(seed, 0, (uint)dimension, ShiftPurpose) & Mask)) << 12);

    /// <summary>The 52 bits of a point before the shift.</summary>
    public static ulong Word(long index, int dimension)
    {
        ulong gray = (ulong)index ^ ((ulong)index >> 1), word = 0;
        for (int bit = dimension * Bits; gray != 0; bit++, gray >>= 1)
        {
            if ((gray & 1) != 0)
                word ^= Directions[bit];
        }

        return word;
    }

    /// <summary>The first dimension: digits in reverse order.</summary>
    private static IEnumerable<ulong> Unity() => Enumerable.Range(1, Bits).Select(k => 1UL << (Bits - k));

    /// <summary>
    /// v_k = a_1 v_(k-1) + ... + a_(s-1) v_(k-s+1) + v_(k-s) + v_(k-s)/2^s, without carry (Joe and Kuo 2003, eq. 2, as
    /// fractions).
    /// </summary>
    private static ulong[] Recur(SobolTable.Row row)
    {
        ulong[] v = new ulong[Bits];
        for (int k = 0; k < Bits; k++)
        {
            if (k < row.S)
            {
                v[k] = (ulong)row.M[k] << (Bits - 1 - k);
                continue;
            }

            v[k] = v[k - row.S] ^ (v[k - row.S] >> row.S);
            for (int j = 1; j < row.S; j++)
            {
                if (((row.A >> (row.S - 1 - j)) & 1) != 0)
                    v[k] ^= v[k - j];
            }
        }

        return v;
    }
}
