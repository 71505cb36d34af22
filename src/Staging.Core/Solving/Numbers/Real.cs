using System.Runtime.CompilerServices;

namespace Staging.Core.Solving;

/// <summary>A plain number.</summary>
internal readonly struct Real(double value) : IReal<Real>
{
    public static bool HasDerivatives => false;

    public double Value => value;

    public static Real Variable(double value, int place) => value;

    public static Real Sqrt(Real x) => Math.Sqrt(x);

    public static Real Pow(Real x, double exponent) => Math.Pow(x, exponent);

    public static Real Sin(Real x) => Math.Sin(x);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Max(Real a, Real b) => Math.Max(a.Value, b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Real Min(Real a, Real b) => Math.Min(a.Value, b.Value);

    public static implicit operator Real(double constant) => new(constant);

    public static implicit operator double(Real x) => x.Value;

    public static Real operator -(Real x) => -x.Value;

    public static Real operator +(Real a, Real b) => a.Value + b.Value;

    public static Real operator +(Real a, double b) => a.Value + b;

    public static Real operator +(double a, Real b) => a + b.Value;

    public static Real operator -(Real a, Real b) => a.Value - b.Value;

    public static Real operator -(Real a, double b) => a.Value - b;

    public static Real operator -(double a, Real b) => a - b.Value;

    public static Real operator *(Real a, Real b) => a.Value * b.Value;

    public static Real operator *(Real a, double b) => a.Value * b;

    public static Real operator *(double a, Real b) => a * b.Value;

    public static Real operator /(Real a, Real b) => a.Value / b.Value;

    public static Real operator /(Real a, double b) => a.Value / b;

    public static Real operator /(double a, Real b) => a / b.Value;
}
