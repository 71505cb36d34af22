namespace Staging.Core.Validation;

/// <summary>How far a check may deviate, and why.</summary>
public sealed record Tolerance(double Value, bool IsRelative, string Reason)
{
    /// <summary>A fraction of the expected value.</summary>
    public static Tolerance Relative(double value, string reason) => new(value, true, reason);

    /// <summary>A fixed amount in the unit of the quantity.</summary>
    public static Tolerance FixedAmount(double value, string reason) => new(value, false, reason);

    /// <summary>Half a unit of the last printed decimal place.</summary>
    public static Tolerance Printed(int decimals) => new(0.5000001 * Math.Pow(10, -decimals), false, "half a unit of the last printed digit");

    /// <summary>Round-off of a closed form evaluated twice.</summary>
    public static Tolerance ClosedForm { get; } = new(1e-9, true, "closed form, both sides to about ten digits");

    public double Absolute(double expected) => IsRelative ? Value * Math.Abs(expected) : Value;
}
