using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>How closely the margin follows one input.</summary>
public sealed class RankedInput
{
    internal RankedInput(ColumnName input, double correlation, Interval interval) =>
        (Input, Correlation, Interval) = (input, correlation, interval);

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>
    /// Rank correlation [-], -1 to 1: positive where more of the input gives more margin; 0 where the margin is the
    /// same in every case.
    /// </summary>
    public double Correlation { get; }

    /// <summary>
    /// Where the true one lies at 95 % [-], by E. C. Fieller, H. O. Hartley and E. S. Pearson, Biometrika 44 (1957)
    /// 470-481; below four cases anywhere. The more inputs, the more of those that do nothing fall outside of theirs.
    /// </summary>
    public Interval Interval { get; }

    /// <summary>Input, correlation and interval on one line.</summary>
    /// <returns>For example <c>grain.ignition [K]  -0.180 (-0.273 to -0.083)</c>.</returns>
    public override string ToString() => Invariant.Text($"{Input,-36} {Correlation,6:F3} ({Interval.Low:F3} to {Interval.High:F3})")
        + (Interval.Holds(0) ? ", not told from 0" : "");
}
