namespace Staging.Core.Validation;

/// <summary>Short form of an outside check on the Flight floor.</summary>
internal static class FlightCheck
{
    public static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) =>
        OutsideCheck.Verify("Flight", quantity, unit, expected, ours, within, source);
}
