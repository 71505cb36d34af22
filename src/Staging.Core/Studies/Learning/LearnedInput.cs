namespace Staging.Core.Studies;

/// <summary>One input before and after the observations.</summary>
public sealed class LearnedInput
{
    internal LearnedInput(ColumnName input, (double Median, Interval Range) before, (double Median, Interval Range) after, double bits)
    {
        (Input, Bits) = (input, bits);
        (MedianBefore, Before) = before;
        (MedianAfter, After) = after;
    }

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>Its median before [Unit].</summary>
    public double MedianBefore { get; }

    /// <summary>Its middle 90 % before, from 5 to 95 % [Unit].</summary>
    public Interval Before { get; }

    /// <summary>Its median after [Unit].</summary>
    public double MedianAfter { get; }

    /// <summary>
    /// Its middle 90 % after [Unit]: it holds the true value with that probability, if prior and model hold.
    /// </summary>
    public Interval After { get; }

    /// <summary>Width after over width before [-]: 1 where nothing was learned of it.</summary>
    public double Narrowing => Before.HalfWidth > 0 ? After.HalfWidth / Before.HalfWidth : 1;

    /// <summary>
    /// How much was learned of it alone [bit]: the divergence of S. Kullback and R. A. Leibler from its distribution
    /// before, by a histogram of at most 16 bins, less what chance alone gives; 0 where nothing was learned. 1 bit is
    /// worth halving its range.
    /// </summary>
    public double Bits { get; }

    /// <summary>Both ranges on one line.</summary>
    /// <returns>For example <c>grain.ignition [K]: 664 to 906, then 672 to 881; 0.11 bit</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Input}: {Before.Low:G3} to {Before.High:G3}, then {After.Low:G3} to {After.High:G3}; {Bits:F2} bit");
}
