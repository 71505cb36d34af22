namespace Staging.Core.Validation;

/// <summary>Short form of an outside check on the Solving floor.</summary>
internal static class SolvingCheck
{
    public static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Solving", quantity, unit, expected, ours, within, source);
}
