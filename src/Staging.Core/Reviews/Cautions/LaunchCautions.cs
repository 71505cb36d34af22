using Staging.Core.Flight;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>Cautions about mass, motors, site, wind and the guide.</summary>
internal static class LaunchCautions
{
    private const double MaxMass = 1.5;             // kg, clause 7
    private const double MaxPropellant = 0.125;     // kg, clause 7
    private const double MaxImpulse = 320;          // N s, clause 7
    private const double MaxTilt = 30;              // degrees from vertical, clause 6
    private const double MaxTiltHighPower = 20;     // the same, high power code
    private const double MaxWind = 20 * 0.44704;    // m/s, 20 mph, clause 9
    private const double MinThrustToWeight = 5;    // -, guidance
    internal const double MinGuideExitSpeed = 13;  // m/s, lower end of the 13 to 15 m/s in use

    /// <summary>
    /// Total impulse up to [N s] and smallest site dimension [m] of the launch site table, 50 ft to 1500 ft.
    /// </summary>
    private static readonly (double Impulse, double Size)[] SiteTable =
    [
        (1.25, 15.24), (2.5, 30.48), (5, 60.96), (10, 121.92), (20, 152.4), (160, 304.8), (320, 457.2),
    ];

    public static IEnumerable<Caution> For(StagingPlan plan, FlightRun flight)
    {
        FlightPlan stack = plan.Flight;
        double mass = stack.LiftOffMass.Kilograms;
        double propellant = stack.Stages.Sum(s => s.PropellantMass.Kilograms);
        double impulse = stack.Stages.Sum(s => s.TotalImpulse.NewtonSeconds);
        yield return Limit("CAU010", "lift-off mass", mass <= MaxMass,
            Invariant.Text($"{mass * 1e3:0.##} g; the code allows {MaxMass * 1e3:F0} g."), "clause 7");
        yield return Limit("CAU011", "propellant", propellant <= MaxPropellant,
            Invariant.Text($"{propellant * 1e3:0.##} g in all stages; the code allows {MaxPropellant * 1e3:F0} g."), "clause 7");
        yield return Limit("CAU012", "total impulse", impulse <= MaxImpulse,
            Invariant.Text($"{impulse:0.##} N s in all stages; the code allows {MaxImpulse:F0} N s."), "clause 7");
        yield return Site(plan.SiteSize.Meters, impulse);
        double wind = stack.Site.Wind.MetersPerSecond;
        yield return Limit("CAU014", "wind", wind <= MaxWind, Invariant.Text(
            $"{wind:0.##} m/s planned; the code allows {MaxWind:0.##} m/s. Wind turns the stack before the upper motor burns."),
            "clause 9");
        yield return LaunchAngle(90 - stack.Guide.Elevation.Degrees, MotorCautions.HasHighPower(stack));
        yield return ThrustToWeight(stack.Stages[0], mass, stack.Site.Gravity);
        yield return GuideExit(flight);
        foreach (Caution caution in MotorCautions.Beyond(stack, mass, propellant, impulse))
            yield return caution;
    }

    private static Caution Site(double size, double impulse)
    {
        double needed = SiteTable.Where(row => impulse <= row.Impulse).Select(row => row.Size).FirstOrDefault(double.NaN);
        bool known = !double.IsNaN(needed);
        return Limit(
            "CAU013",
            "launch site",
            known && size >= needed,
            known
                ? Invariant.Text($"{size:0.##} m smallest dimension; the site table asks for {needed:0.##} m at {impulse:F1} N s. "
                    + $"Multistage flights drift farther.")
                : Invariant.Text($"{size:0.##} m smallest dimension; {impulse:0.##} N s lies beyond the table of the model rocket code."),
            "clause 9, launch site table");
    }

    private static Caution LaunchAngle(double tilt, bool highPower)
    {
        double most = highPower ? MaxTiltHighPower : MaxTilt;
        return new Caution(
            code: "CAU015",
            subject: "launch angle",
            outsideRule: !(tilt <= most),
            text: Invariant.Text($"{tilt:0.##} degrees from vertical; the code {(highPower ? "for high power motors " : "")}allows "
                + $"{most:F0}. Stage near vertical: off it, an upper stage flies far."),
            rule: highPower ? SafetyCodes.HighPowerCode : SafetyCodes.ModelRocketCode("clause 6"));
    }

    private static Caution ThrustToWeight(Stage lowest, double mass, Gravity gravity)
    {
        double weight = mass * gravity.AtSeaLevel.MetersPerSecondSquared;
        double ratio = lowest.AllMotors.Sum(g => g.Count * g.Motor.Thrust.AverageThrust.Newtons) / weight;
        return new Caution(
            code: "CAU016",
            subject: "thrust to weight",
            outsideRule: ratio < MinThrustToWeight,
            text: Invariant.Text(
                $"average thrust of the lowest stage is {ratio:F1} times the lift-off weight; guidance asks for {MinThrustToWeight:F0}."),
            rule: SafetyCodes.Guidance("thrust to weight of 5 or more at lift-off"));
    }

    private static Caution GuideExit(FlightRun flight)
    {
        string rule = Invariant.Text($"guidance asks for {MinGuideExitSpeed:F0} to 15 m/s before the fins steer.");
        return new Caution(
            code: "CAU017",
            subject: "guide exit speed",
            outsideRule: !(flight.GuideExitSpeed?.MetersPerSecond >= MinGuideExitSpeed),
            text: flight.GuideExitSpeed is { } speed
                ? Invariant.Text($"{speed.MetersPerSecond:F1} m/s at the end of the guide; {rule}")
                : $"the guide is never left; {rule}",
            rule: SafetyCodes.Guidance("13 to 15 m/s at the end of rod or rail"));
    }

    private static Caution Limit(string code, string subject, bool within, string text, string clause) =>
        new(code, subject, !within, text, SafetyCodes.ModelRocketCode(clause));
}
