namespace Staging.Core.Validation;

/// <summary>Short form of an outside check on the Flight floor.</summary>
internal static class FlightCheck
{
    public static void Verify(string quantity, string unit, double expected, double ours, Tolerance within, Provenance source) => new OutsideCheck
    {
        Floor = "Flight",
        Quantity = quantity,
        Unit = unit,
        Expected = expected,
        Ours = ours,
        Within = within,
        Provenance = source,
    }.Verify();
}
