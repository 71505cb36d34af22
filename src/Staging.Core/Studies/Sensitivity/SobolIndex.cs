namespace Staging.Core.Studies;

/// <summary>The share of one input in the variance of a result.</summary>
/// <param name="Input">The input.</param>
/// <param name="First">Share of the input alone [-]: what would go, on average, if it were known.</param>
/// <param name="FirstInterval">Where that lies [-].</param>
/// <param name="Total">Share of the input with all that it does together with others [-]: what would stay if all others
/// were known.</param>
/// <param name="TotalInterval">Where that lies [-].</param>
public sealed record SobolIndex(ColumnName Input, double First, Interval FirstInterval, double Total, Interval TotalInterval)
{
    /// <summary>Both shares with their half widths, on one line.</summary>
    /// <returns>For example <c>joint.breakaway: alone 0.314 +- 0.004, with others 0.558 +- 0.003</c>.</returns>
    public override string ToString() => Invariant.Text(
        $"{Input.Name}: alone {First:F3} +- {FirstInterval.HalfWidth:F3}, with others {Total:F3} +- {TotalInterval.HalfWidth:F3}");
}
