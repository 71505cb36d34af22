using Staging.Core.Flight;

namespace Staging.Core.Reviews;

/// <summary>
/// What comes down: every body of the flight as planned, and of the flights in which something fails.
/// </summary>
internal static class DescentText
{
    public static void Write(FlightRun flight, TextSheet sheet)
    {
        sheet.Heading($"What comes down{"how",24}{"lands [s]",14}{"speed [m/s]",14}{"energy [J]",13}{"drift [m]",12}");
        foreach (BodyFlight body in flight.Bodies)
            Piece("  ", body, flight.Plan, sheet);
        foreach (FailureCase failure in flight.FailureCases)
        {
            sheet.Line($"  if {failure.Description}");
            foreach (BodyFlight body in failure.Bodies)
                Piece("    ", body, flight.Plan, sheet);
        }
    }

    private static void Piece(string indent, BodyFlight body, FlightPlan plan, TextSheet sheet)
    {
        string name = (indent + body.Name).PadRight(27);
        if (body.Outcome is not FlightOutcome.Landed landed)
        {
            sheet.Line($"{name}no landing found: treat it as unknown");
            return;
        }

        sheet.Line(Invariant.Text($"{name}{How(body, plan),-16}{landed.Time.Seconds,10:F1}{landed.Speed.MetersPerSecond,14:F1}"
            + $"{landed.KineticEnergy.Joules,13:F1}{body.DriftEstimate?.Meters ?? 0,12:F0}"));
    }

    private static string How(BodyFlight body, FlightPlan plan) => body.Find(FlightEventKind.DeviceOpens) is { } opens
        ? plan.Stages.First(s => s.Name == opens.Stage).Recovery
            .Match((_, _) => "parachute", (_, _) => "streamer", (_, _) => "tumbling", () => "nose first")
        : "nose first";
}
