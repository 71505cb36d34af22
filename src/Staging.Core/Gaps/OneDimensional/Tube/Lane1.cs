using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>One cell alone: the reference for the wider lanes.</summary>
internal readonly struct Lane1(double v) : ILane<Lane1>
{
    private readonly double v = v;

    public static int Count => 1;

    public double Value => v;

    public static Lane1 Of(double value) => new(value);

    public static Lane1 Load(ref double origin, nint index) => new(Unsafe.Add(ref origin, index));

    public static void Store(ref double origin, nint index, Lane1 value) => Unsafe.Add(ref origin, index) = value.v;

    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a.v + b.v);

    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a.v - b.v);

    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a.v * b.v);

    public static Lane1 operator /(Lane1 a, Lane1 b) => new(a.v / b.v);

    public static Lane1 Sqrt(Lane1 a) => new(Math.Sqrt(a.v));

    public static Lane1 Abs(Lane1 a) => new(Math.Abs(a.v));

    public static Lane1 Min(Lane1 a, Lane1 b) => new(double.MinNative(a.v, b.v));

    public static Lane1 Max(Lane1 a, Lane1 b) => new(double.MaxNative(a.v, b.v));

    public static Lane1 WhereLess(Lane1 a, Lane1 b, Lane1 yes, Lane1 no) => a.v < b.v ? yes : no;

    public static double Max(Lane1 a) => a.v;

    public static double Min(Lane1 a) => a.v;

    public static double Sum(Lane1 a) => a.v;

    public static Lane1 First(Lane1 a, int count) => count > 0 ? a : default;
}
