using System.Globalization;
using System.Numerics;

namespace Staging.Core.Studies;

/// <summary>
/// A sum of doubles, or of their squares, without rounding: the result does not depend on the order of the terms, so
/// that parts merge exactly.
/// </summary>
/// <remarks>
/// A fixed-point register as wide as all doubles and their squares (U. Kulisch and W. L. Miranker, Computer Arithmetic
/// in Theory and Practice, 1981; in the carry-save form of R. M. Neal, "Fast exact summation using small and large
/// superaccumulators", 2015). Its size does not depend on the number of terms.
/// </remarks>
internal sealed class ExactSum
{
    /// <summary>Weight of the lowest bit: the square of the least positive double is 2^-2148.</summary>
    private const int Lowest = -2148;

    /// <summary>32 bits a place, up to squares below 2^2048, and room above for 2^60 of them.</summary>
    private const int Places = (2048 - Lowest) / 32 + 3;

    /// <summary>Terms until carries must be passed on: each adds less than 2^33 to a place of 63 bits.</summary>
    private const int MaxPending = 1 << 28;

    private readonly long[] places = new long[Places];
    private int pending;

    public void Add(double x)
    {
        (ulong mantissa, int exponent, bool negative) = Parts(x);
        Add(mantissa, exponent, negative);
    }

    public void AddSquare(double x)
    {
        (ulong mantissa, int exponent, _) = Parts(x);
        Add((UInt128)mantissa * mantissa, 2 * exponent, negative: false);
    }

    public void Add(ExactSum other)
    {
        other.PassCarries();
        PassCarries();
        for (int i = 0; i < Places; i++)
            places[i] += other.places[i];
        PassCarries();
    }

    /// <summary>The sum in units of 2^<see cref="Lowest"/>.</summary>
    public BigInteger Register()
    {
        PassCarries();
        BigInteger sum = 0;
        for (int i = Places - 1; i >= 0; i--)
            sum = (sum << 32) + places[i];
        return sum;
    }

    /// <summary>
    /// Mean and variance of n terms from their sum and their sum of squares: exact fractions, rounded once.
    /// </summary>
    public static (double Mean, double Variance) Moments(ExactSum sum, ExactSum squares, long n)
    {
        BigInteger s = sum.Register(), q = squares.Register();
        // (q - s^2/n)/(n - 1), all in units of 2^Lowest.
        BigInteger scatter = ((q << -Lowest) * n) - s * s;
        double variance = n > 1 ? Ratio(scatter, (BigInteger)n * (n - 1), 2 * Lowest) : 0;
        return (Ratio(s, n, Lowest), variance);
    }

    /// <summary>
    /// Whether n values between two ends can have a sum s and a sum of squares q: s^2 is at most n q (Cauchy), and q at
    /// most (low + high) s - n low high, since no (x - low)(high - x) is negative. Together they also keep the mean
    /// between the ends.
    /// </summary>
    public static bool ArePossible(ExactSum sum, ExactSum squares, long n, double low, double high)
    {
        BigInteger s = sum.Register(), q = squares.Register() << -Lowest, min = Exact(low), max = Exact(high);
        return q.Sign >= 0 && s * s <= n * q && q <= (min + max) * s - n * min * max;
    }

    public string ToText() => Register().ToString("X", CultureInfo.InvariantCulture);

    public static ExactSum FromText(string text)
    {
        var sum = new ExactSum();
        if (!BigInteger.TryParse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out BigInteger rest)
            || rest.GetBitLength() > 32 * (Places - 1) + 63)
            throw new FormatException($"an exact sum is written in hexadecimal digits, not \"{Excerpt.Of(text)}\"");
        for (int i = 0; i < Places - 1; i++, rest >>= 32)
            sum.places[i] = (long)(rest & uint.MaxValue);
        sum.places[Places - 1] = (long)rest;
        return sum;
    }

    /// <summary>A number in units of 2^<see cref="Lowest"/>.</summary>
    private static BigInteger Exact(double x)
    {
        var alone = new ExactSum();
        alone.Add(x);
        return alone.Register();
    }

    /// <summary>numerator 2^exponent / denominator, rounded to a double.</summary>
    private static double Ratio(BigInteger numerator, BigInteger denominator, int exponent)
    {
        if (numerator.IsZero)
            return 0;
        // 64 bits or more in the quotient; a remainder sets a bit below them, so that the single rounding to a double
        // is correct.
        long shift = Math.Max(0, 66 - (long)numerator.GetBitLength() + (long)denominator.GetBitLength());
        BigInteger quotient = BigInteger.DivRem(BigInteger.Abs(numerator) << (int)shift, denominator, out BigInteger remainder);
        if (!remainder.IsZero)
            quotient |= BigInteger.One;
        long surplus = Math.Max(0, (long)quotient.GetBitLength() - 64);
        BigInteger top = quotient >> (int)surplus;
        if ((top << (int)surplus) != quotient)
            top |= BigInteger.One;
        double value = Math.ScaleB((double)(ulong)top, (int)(surplus - shift + exponent));
        return numerator.Sign * value;
    }

    private static (ulong Mantissa, int Exponent, bool Negative) Parts(double x)
    {
        ulong bits = BitConverter.DoubleToUInt64Bits(x);
        int field = (int)(bits >> 52) & 0x7FF;
        ulong fraction = bits & ((1UL << 52) - 1);
        return field == 0 ? (fraction, -1074, x < 0) : (fraction | (1UL << 52), field - 1075, x < 0);
    }

    private void Add(UInt128 magnitude, int exponent, bool negative)
    {
        if (++pending == MaxPending)
            PassCarries();
        int place = (exponent - Lowest) / 32, shift = (exponent - Lowest) % 32;
        // Five places of 32 bits hold a product of 106 bits shifted by up to 31.
        ulong low = (ulong)magnitude, high = (ulong)(magnitude >> 64);
        UInt128 lower = (UInt128)low << shift, upper = (UInt128)high << shift;
        long sign = negative ? -1 : 1;
        places[place] += sign * (long)(uint)lower;
        places[place + 1] += sign * (long)(uint)(lower >> 32);
        places[place + 2] += sign * ((long)(uint)(lower >> 64) + (uint)upper);
        places[place + 3] += sign * (long)(uint)(upper >> 32);
        places[place + 4] += sign * (long)(uint)(upper >> 64);
    }

    /// <summary>Brings every place but the highest to 0 ... 2^32 - 1: the unique form of a sum.</summary>
    private void PassCarries()
    {
        for (int i = 0; i < Places - 1; i++)
        {
            places[i + 1] += places[i] >> 32;
            places[i] &= uint.MaxValue;
        }

        pending = 0;
    }
}
