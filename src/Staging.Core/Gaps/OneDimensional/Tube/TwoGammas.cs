using System.Runtime.CompilerServices;
using Staging.Core.Gases;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Products and air, mixed by mass fraction of R and cv: gamma - 1 = (Y Rp + (1 - Y) Ra)/(Y cvp + (1 - Y) cva).
/// </summary>
internal readonly struct TwoGammas<L>(in GasConstants products, in GasConstants air) : ILaneGas<L>
    where L : struct, ILane<L>
{
    private readonly L Ra = L.Of(air.R);
    private readonly L dR = L.Of(products.R - air.R);
    private readonly L cva = L.Of(air.Cv);
    private readonly L dcv = L.Of(products.Cv - air.Cv);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public L GammaMinusOne(L y) => (Ra + dR * y) / (cva + dcv * y);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public L GammaMinusOne(L y, out L inverse)
    {
        L R = Ra + dR * y, cv = cva + dcv * y;
        L share = L.Of(1) / (R * cv);
        inverse = cv * cv * share;
        return R * R * share;
    }
}
