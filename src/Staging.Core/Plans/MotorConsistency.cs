using Staging.Core.Flight;
using Staging.Core.Gaps;

namespace Staging.Core.Plans;

/// <summary>
/// Whether what a plan says of one booster in two places agrees: the motor that flies, and the source that burns
/// through.
/// </summary>
/// <remarks>
/// Three balances of an end burner. Its web is burnt in its burn time; its grain weighs what its propellant does; its
/// thrust before the end is a thrust coefficient times pressure times throat area. Coefficients of simple nozzles lie
/// near 0.8 to 1.3 (G. P. Sutton and O. Biblarz, Rocket Propulsion Elements, from memory); the bounds are wider, since
/// a cavity at the start and a tail at the end move the means. And as many motors feed the gap as fly below it and burn
/// through.
/// </remarks>
internal static class MotorConsistency
{
    private const double MinRatio = 0.6, MaxRatio = 1.6, MinCoefficient = 0.5, MaxCoefficient = 1.7;

    /// <summary>Part of the burn time over which the thrust before the end is taken [-].</summary>
    private const double From = 0.7, To = 0.95;

    /// <summary>What does not agree between the stage below a gap and the source of the gap.</summary>
    public static IEnumerable<ModelFinding> Of(Stage below, GapSource source, double outside, string path) =>
        [
            .. OfNumber(below, source, path),
            .. source is GapSource.Cluster cluster
                ? cluster.Motors.SelectMany((m, i) => OfAny(below, m, outside, $"{path}.Motors[{i}]"))
                : Of(below.Motor, source, outside, path),
        ];

    /// <summary>A motor of a cluster may be any of those that fly: the one that it agrees with best is asked.</summary>
    private static ModelFinding[] OfAny(Stage below, GapSource.Motor source, double outside, string path) =>
        below.AllMotors.Select(g => g.Motor).Where((m, i) => i == 0 || m.ForwardEnd is not MotorForwardEnd.Plugged)
            .Select(m => Of(m, source, outside, path).ToArray()).MinBy(findings => findings.Length)!;

    /// <summary>
    /// Parallel motors that are not plugged may feed the gap or not; a flow that is given feeds it whatever flies.
    /// </summary>
    private static IEnumerable<ModelFinding> OfNumber(Stage below, GapSource source, string path)
    {
        int feed = source.Match(_ => 1, _ => 0, cluster => cluster.Motors.Length, _ => 1), fly = below.MotorCount;
        int most = fly + below.ParallelMotors.Sum(g => g.Motor.ForwardEnd is MotorForwardEnd.Plugged ? 0 : g.Count);
        if (feed > 0 && (feed < fly || feed > most))
            yield return new ModelFinding(FindingSeverity.Warning, "PLN013", source is GapSource.Cluster ? $"{path}.Motors" : path,
                Invariant.Text($"Motors that feed the gap: {feed}; motors of '{Excerpt.Of(below.Name)}' that burn through: "
                + $"{Number(fly, most)}. The gas and the flight belong to different boosters."));
    }

    private static string Number(int least, int most) => least == most ? Invariant.Text($"{least}") : Invariant.Text($"{least} to {most}");

    private static IEnumerable<ModelFinding> Of(Motor motor, GapSource source, double outside, string path) =>
        source.Match(
            booster => OfThrust(motor, booster.ChamberPressure.Pascals, booster, path),
            _ => [],
            _ => [],
            endBurner => OfGrain(motor, endBurner, outside, path));

    private static IEnumerable<ModelFinding> OfGrain(Motor motor, GapSource.EndBurner grain, double outside, string path)
    {
        if (EndBurnerChecks.OfPressure(grain, outside, path).Length > 0)
            yield break;
        double pressure = BurnThroughEstimate.PressureOf(grain, outside);
        double burnt = grain.BurntLength.Meters, diameter = grain.GrainDiameter.Meters;
        double rate = grain.Rate.At(UnitsNet.Pressure.FromPascals(pressure)).MetersPerSecond, asked = burnt / motor.Thrust.BurnTime.Seconds;
        if (asked / rate is < MinRatio or > MaxRatio)
            yield return Finding("PLN010", $"{path}.BurntLength", Invariant.Text(
                $"{burnt * 1e3:F0} mm in the {motor.Thrust.BurnTime.Seconds:F2} s of '{Excerpt.Of(motor.Name)}' burn "
                + $"at {asked * 1e3:F1} mm/s, but the rate at the {pressure / 1e3:F0} kPa that follow from face and throat is "
                + $"{rate * 1e3:F1} mm/s."));
        double mass = grain.Density.KilogramsPerCubicMeter * Math.PI / 4 * diameter * diameter * burnt;
        double stated = motor.PropellantMass.Kilograms;
        if (mass / stated is < MinRatio or > MaxRatio)
            yield return Finding("PLN011", $"{path}.GrainDiameter", Invariant.Text(
                $"The grain weighs {mass * 1e3:F1} g by its size, the propellant of '{Excerpt.Of(motor.Name)}' {stated * 1e3:F1} g."));
        foreach (ModelFinding finding in OfThrust(motor, pressure, grain, path))
            yield return finding;
    }

    private static IEnumerable<ModelFinding> OfThrust(Motor motor, double pressure, GapSource.Motor source, string path)
    {
        double throat = source.NozzleThroatDiameter.Meters, force = pressure * Math.PI / 4 * throat * throat;
        UnitsNet.Duration burn = motor.Thrust.BurnTime;
        double impulse = (motor.Thrust.ImpulseUntil(To * burn) - motor.Thrust.ImpulseUntil(From * burn)).NewtonSeconds;
        double thrust = impulse / ((To - From) * burn.Seconds);
        if (throat > 0 && thrust / force is < MinCoefficient or > MaxCoefficient)
            yield return Finding("PLN012", $"{path}.NozzleThroatDiameter", Invariant.Text(
                $"'{Excerpt.Of(motor.Name)}' pushes with {thrust:F1} N before its end; {pressure / 1e3:F0} kPa over a throat of "
                + $"{throat * 1e3:F1} mm give {force:F1} N times a thrust coefficient of about 1."));
    }

    private static ModelFinding Finding(string code, string path, string message) => new(FindingSeverity.Warning, code, path,
        message + " One of the numbers is wrong, and so is the gas that the gap is computed with.");
}
