using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Flow through a face, a unit of area: mass, momentum, energy, mass of products.</summary>
internal readonly struct TubeFlux<L>(L mass, L momentum, L energy, L products)
    where L : struct, ILane<L>
{
    private const int S = TubeArrays.Stride;

    public readonly L Mass = mass;
    public readonly L Momentum = momentum;
    public readonly L Energy = energy;
    public readonly L Products = products;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double scratch, nint i)
    {
        L.Store(ref scratch, i + 8 * S, Mass);
        L.Store(ref scratch, i + 9 * S, Momentum);
        L.Store(ref scratch, i + 10 * S, Energy);
        L.Store(ref scratch, i + 11 * S, Products);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static TubeFlux<L> Load(ref double scratch, nint i) => new(
        L.Load(ref scratch, i + 8 * S), L.Load(ref scratch, i + 9 * S), L.Load(ref scratch, i + 10 * S), L.Load(ref scratch, i + 11 * S));
}
