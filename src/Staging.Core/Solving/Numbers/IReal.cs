using System.Numerics;

namespace Staging.Core.Solving;

/// <summary>
/// A number of a right-hand side that is written once and used twice: with <see cref="Real"/> for its slopes, with
/// <see cref="Dual"/> for their derivatives as well.
/// </summary>
/// <typeparam name="T">The number itself.</typeparam>
internal interface IReal<T> : IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
    IDivisionOperators<T, T, T>, IUnaryNegationOperators<T, T>
    where T : struct, IReal<T>
{
    /// <summary>
    /// Whether derivatives are carried: what is known in closed form but costs something is only then worth taking.
    /// </summary>
    static abstract bool HasDerivatives { get; }

    /// <summary>The number without its derivatives: what branches are decided by.</summary>
    double Value { get; }

    /// <summary>A variable by which derivatives are taken; a constant where its place is not among them.</summary>
    /// <param name="value">Its value.</param>
    /// <param name="place">Its place among the derivatives.</param>
    static abstract T Variable(double value, int place);

    /// <summary>The square root; of zero its derivative counts as zero, because no number is large enough.</summary>
    static abstract T Sqrt(T x);

    /// <summary>A power of a positive number.</summary>
    static abstract T Pow(T x, double exponent);

    static abstract T Sin(T x);

    static abstract implicit operator T(double constant);

    static abstract T operator +(T a, double b);

    static abstract T operator +(double a, T b);

    static abstract T operator -(T a, double b);

    static abstract T operator -(double a, T b);

    static abstract T operator *(T a, double b);

    static abstract T operator *(double a, T b);

    static abstract T operator /(T a, double b);

    static abstract T operator /(double a, T b);

    /// <summary>The larger of two; the first where they are equal.</summary>
    static virtual T Max(T a, T b) => a.Value >= b.Value ? a : b;

    /// <summary>The smaller of two; the first where they are equal.</summary>
    static virtual T Min(T a, T b) => a.Value <= b.Value ? a : b;

    /// <summary>The number within bounds.</summary>
    static virtual T Clamp(T x, double low, double high) => T.Min(T.Max(x, low), high);
}
