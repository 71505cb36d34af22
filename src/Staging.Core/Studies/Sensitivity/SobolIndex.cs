namespace Staging.Core.Studies;

/// <summary>The share of one input in the variance of a result.</summary>
public sealed class SobolIndex
{
    internal SobolIndex(ColumnName input, double first, Interval firstInterval, double total, Interval totalInterval) =>
        (Input, First, FirstInterval, Total, TotalInterval) = (input, first, firstInterval, total, totalInterval);

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>Share of the input alone [-]: the average reduction of the variance if it were known.</summary>
    public double First { get; }

    /// <summary>Its confidence interval [-].</summary>
    public Interval FirstInterval { get; }

    /// <summary>Share of the input including its interactions with others [-]: the average variance left if all others
    /// were known.</summary>
    public double Total { get; }

    /// <summary>Its confidence interval [-].</summary>
    public Interval TotalInterval { get; }

    /// <summary>Both shares with their half widths, on one line.</summary>
    /// <returns>For example <c>joint.breakaway: alone 0.314 +- 0.004, with others 0.558 +- 0.003</c>.</returns>
    public override string ToString() => Invariant.Text(
        $"{Input.Name}: alone {First:F3} +- {FirstInterval.HalfWidth:F3}, with others {Total:F3} +- {TotalInterval.HalfWidth:F3}");
}
