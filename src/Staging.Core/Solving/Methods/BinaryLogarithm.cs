namespace Staging.Core.Solving;

/// <summary>
/// Logarithm and power to base two by arithmetic alone, good to 1.1e-4: more than step control needs, and fast.
/// Exact at whole powers of two.
/// </summary>
/// <remarks>
/// The polynomials have the least greatest error of their degree that is exact at zero (linear programming on 4001
/// points).
/// </remarks>
internal static class BinaryLogarithm
{
    private const int FractionBits = 52, ExponentBias = 1023;
    private const double L1 = 1.4417606485643377, L2 = -0.7249041514693061, L3 = 0.5175094007529069, L4 = -0.32962981828125537;
    private const double P1 = 0.6932829274019445, P2 = 0.24221096202839398, P3 = 0.0550089317444847;
    private static readonly long RootHalf = BitConverter.DoubleToInt64Bits(Math.Sqrt(0.5));

    /// <summary>log2 x of a positive, finite and normal number.</summary>
    public static double Of(double x)
    {
        // x = 2^exponent (1 + t) with 1 + t from root 1/2 to root 2.
        long bits = BitConverter.DoubleToInt64Bits(x), exponent = (bits - RootHalf) >> FractionBits;
        double t = BitConverter.Int64BitsToDouble(bits - (exponent << FractionBits)) - 1;
        double perT = Math.FusedMultiplyAdd(t * t, Math.FusedMultiplyAdd(L4, t, L3), Math.FusedMultiplyAdd(L2, t, L1));
        return Math.FusedMultiplyAdd(t, perT, exponent);
    }

    /// <summary>2^y for y from -1000 to 1000.</summary>
    public static double Power(double y)
    {
        double whole = Math.Round(y), f = y - whole;
        double fraction = Math.FusedMultiplyAdd(f * f, Math.FusedMultiplyAdd(P3, f, P2), Math.FusedMultiplyAdd(P1, f, 1));
        return BitConverter.Int64BitsToDouble((double.ConvertToIntegerNative<long>(whole) + ExponentBias) << FractionBits) * fraction;
    }
}
