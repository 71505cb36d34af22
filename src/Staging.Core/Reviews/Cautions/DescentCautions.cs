using Staging.Core.Flight;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>Cautions about how each piece comes down.</summary>
internal static class DescentCautions
{
    /// <summary>11 ft lbf in joules.</summary>
    public const double DebrisLimit = 11 * 1.3558179483314004;

    public static IEnumerable<Caution> For(StagingPlan plan, FlightRun flight) =>
        flight.Bodies.Select(Landing).Append(Drift(flight.Bodies.MaxBy(b => Away(b) ?? double.PositiveInfinity)!, plan.SiteSize.Meters));

    /// <summary>
    /// Distance from the guide at landing: drift by wind and distance by a leaning guide [m]; null where it does not
    /// land.
    /// </summary>
    private static double? Away(BodyFlight body) => body.DriftEstimate?.Meters + Math.Abs(body.ApogeeRange?.Meters ?? 0);

    /// <summary>
    /// The body that lands farthest off, against half the site: the launch point is taken in its middle.
    /// </summary>
    private static Caution Drift(BodyFlight body, double size)
    {
        double? away = Away(body);
        bool leaning = body.ApogeeRange?.Meters > 0;
        return new Caution(
            code: "CAU031",
            subject: "drift",
            outsideRule: !(away <= size / 2),
            text: away is { } metres
                ? Invariant.Text(
                    $"{body.Name} lands {(leaning ? "at least" : "about")} {metres:F0} m off, by constant "
                        + $"wind{(leaning ? " and a leaning guide; bending over, it flies farther than that" : "")}; the edge of the "
                            + $"site is {size / 2:F0} m from its middle.")
                : $"{body.Name}: no landing was found, so no drift; treat it as unknown.",
            rule: SafetyCodes.ModelRocketCode("clause 9, launch site table; that the rocket should land on the site is our reading"));
    }

    private static Caution Landing(BodyFlight body) => body.Outcome is FlightOutcome.Landed landed
        ? new Caution(
            code: "CAU030",
            subject: "landing",
            outsideRule: landed.KineticEnergy.Joules >= DebrisLimit,
            text: Invariant.Text($"{body.Name} lands {landed.Time.Seconds:F0} s after launch at {landed.Speed.MetersPerSecond:F1} m/s "
                + $"with {landed.KineticEnergy.Joules:F2} J; {DebrisLimit:F1} J counts as debris."),
            rule: SafetyCodes.DebrisEnergy)
        : new Caution(
            code: "CAU030",
            subject: "landing",
            outsideRule: true,
            text: $"{body.Name}: no landing was found; treat it as unknown.",
            rule: SafetyCodes.DebrisEnergy);
}
