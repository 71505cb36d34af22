using Staging.Core.Flight;
using Staging.Core.Gaps;

namespace ReliabilityStudy;

/// <summary>One case: the flight, and the gap run at the state that the flight gave it.</summary>
internal sealed record StagedFlight(FlightRun Flight, GapRun Gap)
{
    /// <summary>
    /// Highest surface temperature of the grain above its ignition temperature [K]; below 0 where it stays too cool.
    /// </summary>
    public double Margin_K => MarginOf(Gap);

    public static double MarginOf(GapRun gap) => gap.PeakGrainSurface.Kelvins - gap.Problem.Design.Grain.IgnitionTemperature.Kelvins;
}
