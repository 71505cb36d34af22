namespace Staging.Core.Validation;

/// <summary>Short form of an outside check on the Gases floor.</summary>
internal static class GasCheck
{
    /// <summary>Round-off of closed forms, where the reference carries fifteen digits.</summary>
    public static Tolerance FifteenDigits { get; } = Tolerance.Relative(1e-13, "closed form, reference given to fifteen digits");

    /// <summary>Closed forms where the reference carries twelve digits.</summary>
    public static Tolerance TwelveDigits { get; } = Tolerance.Relative(6e-12, "closed form, reference given to twelve digits");

    /// <summary>Closed forms and quadratures where the reference carries ten digits.</summary>
    public static Tolerance TenDigits { get; } = Tolerance.Relative(6e-10, "closed form, reference given to ten digits");

    public static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Gases", quantity, unit, expected, ours, within, source);
}
