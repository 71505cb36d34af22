using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Eight cells in one register of 512 bits.</summary>
internal readonly struct Lane8(Vector512<double> v) : ILane<Lane8>
{
    private readonly Vector512<double> v = v;

    public static int Count => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ref double origin, nint index) => new(Vector512.LoadUnsafe(ref origin, (nuint)index));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Store(ref double origin, nint index, Lane8 value) => Vector512.StoreUnsafe(value.v, ref origin, (nuint)index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 a, Lane8 b) => new(a.v + b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a, Lane8 b) => new(a.v - b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 a, Lane8 b) => new(a.v * b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator /(Lane8 a, Lane8 b) => new(a.v / b.v);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Sqrt(Lane8 a) => new(Vector512.Sqrt(a.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Abs(Lane8 a) => new(Vector512.Abs(a.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 a, Lane8 b) => new(Vector512.MinNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 a, Lane8 b) => new(Vector512.MaxNative(a.v, b.v));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 WhereLess(Lane8 a, Lane8 b, Lane8 yes, Lane8 no) =>
        new(Vector512.ConditionalSelect(Vector512.LessThan(a.v, b.v), yes.v, no.v));

    public static double Max(Lane8 a)
    {
        double m = a.v[0];
        for (int i = 1; i < Count; i++)
            m = Math.Max(m, a.v[i]);
        return m;
    }

    public static double Min(Lane8 a)
    {
        double m = a.v[0];
        for (int i = 1; i < Count; i++)
            m = Math.Min(m, a.v[i]);
        return m;
    }

    public static double Sum(Lane8 a) => Vector512.Sum(a.v);

    public static Lane8 First(Lane8 a, int count)
    {
        Vector512<double> kept = Vector512<double>.Zero;
        for (int i = 0; i < Math.Min(count, Count); i++)
            kept = kept.WithElement(i, a.v[i]);
        return new(kept);
    }
}
