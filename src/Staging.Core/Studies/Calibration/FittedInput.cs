namespace Staging.Core.Studies;

/// <summary>One input as fitted.</summary>
public sealed class FittedInput
{
    internal FittedInput(ColumnName input, double value, double standardError, Interval interval, bool isAtEnd) =>
        (Input, Value, StandardError, Interval, IsAtEnd) = (input, value, standardError, interval, isAtEnd);

    /// <summary>The input.</summary>
    public ColumnName Input { get; }

    /// <summary>The value that fits best [Unit].</summary>
    public double Value { get; }

    /// <summary>Its standard error [Unit].</summary>
    public double StandardError { get; }

    /// <summary>Confidence interval of the true value, by Student's distribution, if the model holds [Unit].</summary>
    public Interval Interval { get; }

    /// <summary>Whether the fit ended at an end of its range: then the standard error means little.</summary>
    public bool IsAtEnd { get; }

    /// <summary>Value and standard error on one line.</summary>
    /// <returns>For example <c>source.fragment-mass: 0.192 +- 0.004 g</c>.</returns>
    public override string ToString() => Invariant.Text($"{Input.Name}: {Value:G5} +- {StandardError:G2} {Input.Unit}");
}
