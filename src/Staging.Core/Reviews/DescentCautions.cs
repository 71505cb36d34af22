using Staging.Core.Flight;
using static Staging.Core.Reviews.CautionRules;

namespace Staging.Core.Reviews;

/// <summary>Cautions about how each piece comes down.</summary>
internal static class DescentCautions
{
    /// <summary>11 ft lbf in joules.</summary>
    public const double DebrisLimit = 11 * 1.3558179483314004;

    public static IEnumerable<Caution> For(FlightRun flight) => flight.Bodies.Select(Landing);

    private static Caution Landing(BodyFlight body) => body.Outcome is FlightOutcome.Landed landed
        ? new Caution
        {
            Code = "CAU030",
            Subject = "landing",
            OutsideRule = landed.KineticEnergy.Joules >= DebrisLimit,
            Text = Say($"{body.Name} lands {landed.Time.Seconds:F0} s after launch at {landed.Speed.MetersPerSecond:F1} m/s with {landed.KineticEnergy.Joules:F2} J; {DebrisLimit:F1} J counts as debris in casualty analysis."),
            Rule = SafetyCodes.DebrisEnergy,
        }
        : new Caution
        {
            Code = "CAU030",
            Subject = "landing",
            OutsideRule = true,
            Text = $"{body.Name}: no landing was found; treat it as unknown.",
            Rule = SafetyCodes.DebrisEnergy,
        };
}
