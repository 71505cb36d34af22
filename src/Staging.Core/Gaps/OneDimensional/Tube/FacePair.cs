using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Values at the left and the right face of a cell, seen from inside.</summary>
internal readonly struct FacePair<L>(in Primitive<L> left, in Primitive<L> right)
    where L : struct, ILane<L>
{
    private const int S = TubeArrays.Stride;

    public readonly Primitive<L> Left = left;
    public readonly Primitive<L> Right = right;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double scratch, nint i)
    {
        L.Store(ref scratch, i, Left.r);
        L.Store(ref scratch, i + S, Left.u);
        L.Store(ref scratch, i + 2 * S, Left.p);
        L.Store(ref scratch, i + 3 * S, Left.Y);
        L.Store(ref scratch, i + 4 * S, Right.r);
        L.Store(ref scratch, i + 5 * S, Right.u);
        L.Store(ref scratch, i + 6 * S, Right.p);
        L.Store(ref scratch, i + 7 * S, Right.Y);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Primitive<L> LoadLeft(ref double scratch, nint i) => new(
        L.Load(ref scratch, i), L.Load(ref scratch, i + S), L.Load(ref scratch, i + 2 * S), L.Load(ref scratch, i + 3 * S));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Primitive<L> LoadRight(ref double scratch, nint i) => new(
        L.Load(ref scratch, i + 4 * S), L.Load(ref scratch, i + 5 * S), L.Load(ref scratch, i + 6 * S), L.Load(ref scratch, i + 7 * S));
}
