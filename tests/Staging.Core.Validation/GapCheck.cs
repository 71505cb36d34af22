namespace Staging.Core.Validation;

/// <summary>Short form of an outside check on the Gaps floor.</summary>
internal static class GapCheck
{
    public static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Gaps", quantity, unit, expected, ours, within, source);
}
