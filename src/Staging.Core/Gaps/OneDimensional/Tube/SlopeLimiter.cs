using System.Runtime.CompilerServices;

namespace Staging.Core.Gaps.OneDimensional;

/// <summary>
/// Slopes within a cell from the differences to its neighbours: smooth flow, jumps that the gas carries with it, and
/// shocks.
/// </summary>
/// <remarks>
/// <para>
/// Smooth flow takes the monotonised central slope (B. van Leer, J. Comput. Phys. 23 (1977) 276). It lets a contact
/// spread without end, because no characteristics run into one and steepen it. A density that jumps without a jump of
/// pressure, and a mass fraction that jumps, therefore take a compressive slope: the greatest that stays monotone, 2
/// min(|a|, |b|), but at most 1.2 max(|a|, |b|), where 1 would be superbee (P. L. Roe, Lectures in Applied Mathematics
/// 22 (1985) 163; the region in which such slopes stay monotone: P. K. Sweby, SIAM J. Numer. Anal. 21 (1984) 995).
/// Compressing the field of the contact alone is A. Harten's idea (Comm. Pure Appl. Math. 30 (1977) 611; H. Yang, J.
/// Comput. Phys. 89 (1990) 125). All from memory; the rules that tell a jump are our own, and their numbers judgements.
/// </para>
/// <para>
/// Behind a shock that hardly moves over the grid schemes of second order leave waves (T. W. Roberts, J. Comput. Phys.
/// 90 (1990) 141). Flat cells within strong shocks quieten them (P. Colella and P. R. Woodward, J. Comput. Phys. 54
/// (1984) 174, appendix; from memory).
/// </para>
/// </remarks>
internal static class SlopeLimiter<L>
    where L : struct, ILane<L>
{
    /// <summary>
    /// Greatest slope at a jump, over the greater difference [-]: a judgement, 1.1 to 1.5 do as well.
    /// </summary>
    private const double Compression = 1.2;

    /// <summary>
    /// Third difference over the sum of the two next to the cell that makes a jump [-]. On smooth flow it falls with
    /// the cell, at an extremum too, so that on a fine grid nothing smooth is taken for a jump. A judgement: 0.25 to
    /// 0.35.
    /// </summary>
    private const double Bend = 0.3;

    /// <summary>
    /// Least relative jump of density from neighbour to neighbour that is compressed [-]: a judgement, 0.05 to 0.2.
    /// </summary>
    private const double MinDensityJump = 0.15;

    /// <summary>
    /// Times by which the relative jump of density must exceed that of pressure [-]. In waves of sound, fans and shocks
    /// it is the smaller of the two by a factor of gamma or more; across a contact the pressure does not change.
    /// </summary>
    private const double OverPressure = 2;

    /// <summary>Least jump of the mass fraction that is compressed [-]: a judgement, 0.02 to 0.1.</summary>
    private const double MinFractionJump = 0.1;

    /// <summary>
    /// Least relative jump of pressure over a cell in which gas is stopped that makes a strong shock [-] (Colella and
    /// Woodward 1984, appendix).
    /// </summary>
    private const double StrongShock = 1.0 / 3;

    /// <summary>Monotonised central slope: (a + b)/2, held between zero and twice the smaller of a and b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static L Smooth(L a, L b) => Hold(L.Of(0.5) * (a + b), a, b);

    /// <summary>
    /// The same unless a and b, between the differences before and after them, belong to a jump, and
    /// <paramref name="carried"/> is positive: then the compressive slope.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static L Carried(L before, L a, L b, L after, L carried)
    {
        L sizeA = L.Abs(a), sizeB = L.Abs(b);
        L bend = L.Abs((after - b) - (a - before)) - L.Of(Bend) * (sizeA + sizeB);
        L steep = L.Of(Compression) * L.WhereLess(sizeA, sizeB, b, a);
        return Hold(L.WhereLess(L.Of(0), L.Min(bend, carried), steep, L.Of(0.5) * (a + b)), a, b);
    }

    /// <summary>Positive where density jumps more than the pressure explains.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static L DensityJump(L density, L pressure, L change, L pressureChange) =>
        pressure * L.Abs(change) - density * (L.Of(OverPressure) * L.Abs(pressureChange) + L.Of(MinDensityJump) * pressure);

    /// <summary>Positive where the mass fraction jumps.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static L FractionJump(L change) => L.Abs(change) - L.Of(MinFractionJump);

    /// <summary>
    /// Positive within a strong shock: pressure jumps from neighbour to neighbour, and the gas is stopped.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static L Shock(L leftPressure, L rightPressure, L stopped) =>
        L.Min(L.Abs(rightPressure - leftPressure) - L.Of(StrongShock) * L.Min(leftPressure, rightPressure), stopped);

    /// <summary>A slope held between zero and twice the smaller of two differences.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static L Hold(L slope, L a, L b)
    {
        L zero = L.Of(0), a2 = a + a, b2 = b + b;
        L most = L.Max(L.Min(a2, b2), zero), min = L.Min(L.Max(a2, b2), zero);
        return L.Max(L.Min(slope, most), min);
    }
}
