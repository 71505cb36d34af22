using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Four cells in one register of 256 bits.</summary>
internal readonly struct Lane4(Vector256<double> v) : ILane<Lane4>
{
    private readonly Vector256<double> v = v;

    public static int Count => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Load(ref double origin, nint index) => new(Vector256.LoadUnsafe(ref origin, (nuint)index));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(ref double origin, nint index, Lane4 value) => Vector256.StoreUnsafe(value.v, ref origin, (nuint)index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator +(Lane4 a, Lane4 b) => new(a.v + b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator -(Lane4 a, Lane4 b) => new(a.v - b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator *(Lane4 a, Lane4 b) => new(a.v * b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 operator /(Lane4 a, Lane4 b) => new(a.v / b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Sqrt(Lane4 a) => new(Vector256.Sqrt(a.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Abs(Lane4 a) => new(Vector256.Abs(a.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Min(Lane4 a, Lane4 b) => new(Vector256.MinNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 Max(Lane4 a, Lane4 b) => new(Vector256.MaxNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane4 WhereLess(Lane4 a, Lane4 b, Lane4 yes, Lane4 no) =>
        new(Vector256.ConditionalSelect(Vector256.LessThan(a.v, b.v), yes.v, no.v));

    public static double Max(Lane4 a)
    {
        double m = a.v[0];
        for (int i = 1; i < Count; i++)
            m = Math.Max(m, a.v[i]);
        return m;
    }

    public static double Min(Lane4 a)
    {
        double m = a.v[0];
        for (int i = 1; i < Count; i++)
            m = Math.Min(m, a.v[i]);
        return m;
    }

    public static double Sum(Lane4 a) => Vector256.Sum(a.v);

    public static Lane4 First(Lane4 a, int count)
    {
        Vector256<double> kept = Vector256<double>.Zero;
        for (int i = 0; i < Math.Min(count, Count); i++)
            kept = kept.WithElement(i, a.v[i]);
        return new(kept);
    }
}
