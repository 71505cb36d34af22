using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>Two gases of one gamma: whatever they mix, gamma stays.</summary>
internal readonly struct OneGamma<L>(double gamma) : ILaneGas<L>
    where L : struct, ILane<L>
{
    private readonly L g = L.Of(gamma - 1);
    private readonly L inverse = L.Of(1 / (gamma - 1));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public L GammaMinusOne(L y) => g;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public L GammaMinusOne(L y, out L inverse)
    {
        inverse = this.inverse;
        return g;
    }
}
