namespace Staging.Core.Solving;

/// <summary>
/// Logarithm and power to base two by arithmetic alone, good to four millionths: more than the size of a step asks for, quicker than the functions of the
/// mathematical library, and the same bits on every machine, so that every machine takes the same steps. Exact at whole powers of two.
/// </summary>
internal static class BinaryLogarithm
{
    private const int FractionBits = 52, ExponentBias = 1023;
    private const double Ln2 = 0.69314718055994531;
    private static readonly long RootHalf = BitConverter.DoubleToInt64Bits(Math.Sqrt(0.5));

    /// <summary>log2 x of a positive, finite and normal number.</summary>
    public static double Of(double x)
    {
        long bits = BitConverter.DoubleToInt64Bits(x), exponent = (bits - RootHalf) >> FractionBits;
        // x = 2^exponent m with m from root 1/2 to root 2, and ln m = 2 artanh s, s = (m - 1)/(m + 1); what is left out is below s^7/2 < 3e-6.
        double m = BitConverter.Int64BitsToDouble(bits - (exponent << FractionBits)), s = (m - 1) / (m + 1), s2 = s * s;
        return Math.FusedMultiplyAdd(2 / Ln2 * s, Math.FusedMultiplyAdd(s2, Math.FusedMultiplyAdd(s2, 1.0 / 5, 1.0 / 3), 1), exponent);
    }

    /// <summary>2^y for y from -1000 to 1000.</summary>
    public static double Power(double y)
    {
        double whole = Math.Round(y), f = (y - whole) * Ln2;
        // The exponential series to the fifth power, f at most (ln 2)/2; what is left out is below f^6/500 < 4e-6.
        double f2 = f * f, low = Math.FusedMultiplyAdd(f2, 0.5, 1 + f);
        double high = Math.FusedMultiplyAdd(f2, 1.0 / 120, Math.FusedMultiplyAdd(f, 1.0 / 24, 1.0 / 6));
        double fraction = Math.FusedMultiplyAdd(f2 * f, high, low);
        return BitConverter.Int64BitsToDouble((double.ConvertToIntegerNative<long>(whole) + ExponentBias) << FractionBits) * fraction;
    }
}
