namespace Staging.Core.Studies;

/// <summary>One input as fitted.</summary>
/// <param name="Input">The input.</param>
/// <param name="Value">The value that fits best [Unit].</param>
/// <param name="StandardError">Its standard error [Unit].</param>
/// <param name="Interval">Where the true value lies, by Student's distribution, if the model holds [Unit].</param>
/// <param name="IsAtEnd">Whether it ran into an end of its range: then the standard error means little.</param>
public sealed record FittedInput(ColumnName Input, double Value, double StandardError, Interval Interval, bool IsAtEnd)
{
    /// <summary>Value and standard error on one line.</summary>
    /// <returns>For example <c>source.fragment-mass: 0.192 +- 0.004 g</c>.</returns>
    public override string ToString() => Invariant.Text($"{Input.Name}: {Value:G5} +- {StandardError:G2} {Input.Unit}");
}
