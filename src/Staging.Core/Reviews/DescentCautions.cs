using Staging.Core.Flight;
using static Staging.Core.Reviews.CautionRules;

namespace Staging.Core.Reviews;

/// <summary>Cautions about how each piece comes down.</summary>
internal static class DescentCautions
{
    /// <summary>11 ft lbf in joules.</summary>
    public const double DebrisLimit = 11 * 1.3558179483314004;

    public static IEnumerable<Caution> For(StagingPlan plan, FlightRun flight) =>
        flight.Bodies.Select(Landing).Concat(flight.Bodies.Select(body => Drift(body, plan.SiteSize.Meters)));

    /// <summary>Drift by wind and distance by a leaning guide, against half the site: the launch point is taken in its middle.</summary>
    private static Caution Drift(BodyFlight body, double size)
    {
        double? away = body.DriftEstimate?.Meters + Math.Abs(body.ApogeeRange?.Meters ?? 0);
        return new Caution
        {
            Code = "CAU031",
            Subject = "drift",
            OutsideRule = !(away <= size / 2),
            Text = away is { } metres
                ? Say($"{body.Name} lands about {metres:F0} m away (constant wind times the time from apogee, plus its distance at apogee); {size / 2:F0} m from the middle of the site to its edge. An estimate: it may be half or twice that.")
                : $"{body.Name}: no landing was found, so no drift; treat it as unknown.",
            Rule = SafetyCodes.ModelRocketCode("clause 9, launch site table; that the rocket should land on the site is our reading"),
        };
    }

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
