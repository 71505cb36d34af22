namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Several cells side by side in one register, or one cell alone: the kernels are written once, for any number of
/// lanes.
/// </summary>
/// <remarks>
/// Every operation rounds as the plain double does, and nothing is fused, so that a run gives the same bits with any
/// number of lanes.
/// </remarks>
internal interface ILane<T>
    where T : struct, ILane<T>
{
    /// <summary>Number of cells.</summary>
    static abstract int Count { get; }

    /// <summary>The same number in every lane.</summary>
    static abstract T Of(double value);

    static abstract T Load(ref double origin, nint index);

    static abstract void Store(ref double origin, nint index, T value);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Sqrt(T a);

    static abstract T Abs(T a);

    static abstract T Min(T a, T b);

    static abstract T Max(T a, T b);

    /// <summary>Lane by lane: <paramref name="yes"/> where a is less than b, otherwise <paramref name="no"/>.</summary>
    static abstract T WhereLess(T a, T b, T yes, T no);

    /// <summary>Greatest of all lanes.</summary>
    static abstract double Max(T a);

    /// <summary>Least of all lanes; not a number when any lane is.</summary>
    static abstract double Min(T a);

    /// <summary>Sum of all lanes.</summary>
    static abstract double Sum(T a);

    /// <summary>The first <paramref name="count"/> lanes, the others zero.</summary>
    static abstract T First(T a, int count);
}
