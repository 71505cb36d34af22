namespace Staging.Core.Studies;

/// <summary>
/// Philox 4x32: a counter and a key in, four random words out. There is no state, so any case can be drawn alone.
/// </summary>
/// <remarks>
/// J. K. Salmon, M. A. Moraes, R. O. Dror and D. E. Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC'11 (2011),
/// doi:10.1145/2063384.2063405, section 3.3; ten rounds, with the multipliers and Weyl constants of table 2 there.
/// </remarks>
internal static class Philox4x32
{
    public const int Rounds = 10;

    private const uint M0 = 0xD2511F53;
    private const uint M1 = 0xCD9E8D57;

    /// <summary>Golden ratio: the key grows by it every round.</summary>
    private const uint W0 = 0x9E3779B9;

    /// <summary>The square root of three, less one.</summary>
    private const uint W1 = 0xBB67AE85;

    public static (uint X0, uint X1, uint X2, uint X3) Block(uint c0, uint c1, uint c2, uint c3, uint k0, uint k1, int rounds = Rounds)
    {
        for (int round = 0; round < rounds; round++)
        {
            ulong p0 = (ulong)M0 * c0, p1 = (ulong)M1 * c2;
            (c0, c1, c2, c3) = ((uint)(p1 >> 32) ^ c1 ^ k0, (uint)p1, (uint)(p0 >> 32) ^ c3 ^ k1, (uint)p0);
            k0 += W0;
            k1 += W1;
        }

        return (c0, c1, c2, c3);
    }

    /// <summary>
    /// 64 random bits of one draw of one case; <paramref name="purpose"/> keeps the uses of a seed apart.
    /// </summary>
    public static ulong Bits(ulong seed, ulong index, uint draw, uint purpose)
    {
        (uint x0, uint x1, _, _) = Block((uint)index, (uint)(index >> 32), draw, purpose, (uint)seed, (uint)(seed >> 32));
        return ((ulong)x1 << 32) | x0;
    }

    /// <summary>2^-52: the width of a cell.</summary>
    private const double Cell = 1.0 / (1UL << 52);

    /// <summary>How near <see cref="Unit"/> comes to 0 and to 1 [-].</summary>
    public const double Nearest = 0.5 * Cell;

    /// <summary>The middle of one of 2^52 equal cells of (0, 1): never 0, never 1, and exact as a double.</summary>
    public static double Unit(ulong bits) => ((bits >> 12) + 0.5) * Cell;
}
