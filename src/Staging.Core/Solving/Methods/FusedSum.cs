using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Staging.Core.Solving;

/// <summary>
/// Weighted sums with one rounding per term, in the order in which <see cref="WeightedRows"/> takes them, so that both
/// give the same bits.
/// </summary>
internal static class FusedSum
{
    /// <summary>The sum and one term more: sum + weight * slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double And(this double sum, double weight, double slope) => Math.FusedMultiplyAdd(weight, slope, sum);

    /// <summary>The same for four sums at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> And(this Vector256<double> sum, double weight, Vector256<double> slopes) =>
        Vector256.FusedMultiplyAdd(Vector256.Create(weight), slopes, sum);

    /// <summary>The state reached along a slope in a time: y + dt * slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Over(this double slope, double dt, double y) => Math.FusedMultiplyAdd(dt, slope, y);
}
