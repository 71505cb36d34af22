using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Staging.Core.Solving;

/// <summary>
/// A dual number: a value and its derivatives by <see cref="Places"/> variables, which every operation takes along by
/// the chain rule. Forward differentiation: exact to round-off, without an increment to choose.
/// </summary>
/// <remarks>
/// A. Griewank and A. Walther, Evaluating Derivatives, 2nd ed. (2008), chapter 3. Values are those of plain numbers to
/// the bit. No element meets another, so the width of the processor's lanes changes nothing.
/// </remarks>
internal readonly struct Dual : IReal<Dual>
{
    /// <summary>Number of derivatives.</summary>
    public const int Places = 8;

    private const int Half = Places / 2;

    private readonly double value;
    private readonly Vector256<double> low;
    private readonly Vector256<double> high;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Dual(double value, Vector256<double> low, Vector256<double> high) => (this.value, this.low, this.high) = (value, low, high);

    public static bool HasDerivatives => true;

    public double Value => value;

    /// <summary>The derivative by the variable at a place.</summary>
    public double this[int place] => place < Half ? low[place] : high[place - Half];

    /// <summary>Writes the derivatives, the first places first, as many as there is room for.</summary>
    public void CopyTo(Span<double> derivatives)
    {
        if (derivatives.Length == Places)
        {
            low.CopyTo(derivatives);
            high.CopyTo(derivatives[Half..]);
            return;
        }

        for (int place = 0; place < derivatives.Length; place++)
            derivatives[place] = this[place];
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual Variable(double value, int place) => new(value, One(place), One(place - Half));

    public static Dual Sqrt(Dual x)
    {
        double root = Math.Sqrt(x.value);
        return x.Of(root, root > 0 ? 0.5 / root : 0);
    }

    public static Dual Pow(Dual x, double exponent)
    {
        double power = Math.Pow(x.value, exponent);
        return x.Of(power, exponent * power / x.value);
    }

    public static Dual Sin(Dual x) => x.Of(Math.Sin(x.value), Math.Cos(x.value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static implicit operator Dual(double constant) => new(constant, default, default);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator -(Dual x) => new(-x.value, -x.low, -x.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator +(Dual a, Dual b) => new(a.value + b.value, a.low + b.low, a.high + b.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator +(Dual a, double b) => new(a.value + b, a.low, a.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator +(double a, Dual b) => new(a + b.value, b.low, b.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator -(Dual a, Dual b) => new(a.value - b.value, a.low - b.low, a.high - b.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator -(Dual a, double b) => new(a.value - b, a.low, a.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator -(double a, Dual b) => new(a - b.value, -b.low, -b.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator *(Dual a, Dual b) =>
        new(a.value * b.value, a.value * b.low + b.value * a.low, a.value * b.high + b.value * a.high);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator *(Dual a, double b) => a.Of(a.value * b, b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator *(double a, Dual b) => b.Of(a * b.value, a);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator /(Dual a, Dual b)
    {
        double quotient = a.value / b.value, per = 1 / b.value;
        return new(quotient, per * (a.low - quotient * b.low), per * (a.high - quotient * b.high));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator /(Dual a, double b) => a.Of(a.value / b, 1 / b);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Dual operator /(double a, Dual b)
    {
        double quotient = a / b.value;
        return b.Of(quotient, -quotient / b.value);
    }

    /// <summary>A function of this number alone, of which value and slope are known.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Dual Of(double function, double slope) => new(function, slope * low, slope * high);

    /// <summary>One at a place of four, zero elsewhere.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> One(int place) =>
        Vector256.Equals(Vector256.Create(0.0, 1, 2, 3), Vector256.Create((double)place)) & Vector256.Create(1.0);
}
