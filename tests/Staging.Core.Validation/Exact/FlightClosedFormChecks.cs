using Staging.Core.Flight;

namespace Staging.Core.Validation.Exact;

/// <summary>Boost and coast with square-law drag, constant mass in each, uniform air and gravity.</summary>
public class FlightClosedFormChecks
{
    private const double G = 9.80665;

    private static readonly Provenance SquareLawDrag = new()
    {
        Source = "Closed forms of boost and coast with constant mass under square-law drag, from m dv/dt = F - k v^2",
        Locator = "v = a tanh(k a t/m), y = (m/k) ln cosh(k a t/m); coast y = (m/2k) ln(1 + v^2/vt^2)",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Tolerance ToTheIntegrator = Tolerance.Relative(1e-7, "integrated at a relative tolerance of 1e-10");
    private static readonly FlightOptions Tight = new() { Solver = new() { RelativeTolerance = 1e-10, ScaledAbsoluteTolerance = 1e-12 } };

    [Theory]
    [InlineData("6 N, 24.8 mm", 6, .050, .044, .5, .0248, 1.225, .85)]
    [InlineData("10 N, 33.3 mm", 10, .100, .088, .75, .0333, 1.225, 1)]
    [InlineData("5 N, 19 mm", 5, .035, .029, .6, .019, 1.225, 1)]
    [InlineData("30 N, 100 mm", 30, 1, .95, .6, .1, 1.225, 2)]
    [InlineData("12 N, 41.6 mm", 12, .08, .07, .45, .0416, 1, 1.7)]
    public void Boost_and_coast(string name, double T, double boostMass, double coastMass, double Cd, double d, double rho, double burn)
    {
        double k = 0.5 * rho * Cd * Math.PI / 4 * d * d;
        (double v, double y) = Boost(0, T, boostMass, k, burn);
        (double tc, double yc) = Coast(v, coastMass, k);

        FlightPlan plan = Simple.Plan(rho, Cd, d, (T, burn, boostMass - coastMass), coastMass);
        FlightRun run = plan.Flown(Tight);
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout)!;
        Check($"speed at burnout, {name}", "m/s", v, burnout.Before.Velocity.MetersPerSecond);
        Check($"height at burnout, {name}", "m", y, burnout.Before.Height.Meters);
        Check($"coast time, {name}", "s", tc, run.Main.ApogeeTime!.Value.Seconds - burn);
        Check($"apogee, {name}", "m", y + yc, run.Apogee!.Value.Meters);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.05)]
    public void Two_stages_with_a_coast_between(double gap)
    {
        const double d = .0248, rho = 1.225;
        double area = Math.PI / 4 * d * d;
        double k1 = 0.5 * rho * .6 * area, k2 = 0.5 * rho * .5 * area;
        (double v1, double y1) = Boost(0, 8, .090, k1, .9);
        double vt = Math.Sqrt(.060 * G / k2), theta = Math.Atan(v1 / vt);
        double vIgnition = vt * Math.Tan(theta - G * gap / vt);
        double yIgnition = y1 + .060 / k2 * Math.Log(Math.Cos(theta - G * gap / vt) / Math.Cos(theta));
        (double v2, double dy2) = Boost(vIgnition, 6, .055, k2, 1.6);
        (double tc, double yc) = Coast(v2, .048, k2);

        FlightRun run = Simple.TwoStages(gap).Flown(Tight);
        FlightEvent ignition = run.Main.Find(FlightEventKind.Ignition, "upper")!;
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout, "upper")!;
        string name = $"two stages, coast {gap:0.00} s";
        Check($"speed at second ignition, {name}", "m/s", vIgnition, ignition.After.Velocity.MetersPerSecond);
        Check($"height at second ignition, {name}", "m", yIgnition, ignition.After.Height.Meters);
        Check($"speed at second burnout, {name}", "m/s", v2, burnout.Before.Velocity.MetersPerSecond);
        Check($"height at second burnout, {name}", "m", yIgnition + dy2, burnout.Before.Height.Meters);
        Check($"time of apogee, {name}", "s", .9 + gap + 1.6 + tc, run.Main.ApogeeTime!.Value.Seconds);
        Check($"apogee, {name}", "m", yIgnition + dy2 + yc, run.Apogee!.Value.Meters);
    }

    private static (double V, double Y) Boost(double v0, double T, double m, double k, double t)
    {
        double a = Math.Sqrt((T - m * G) / k), phi = Math.Atanh(v0 / a), end = phi + k * a * t / m;
        return (a * Math.Tanh(end), m / k * Math.Log(Math.Cosh(end) / Math.Cosh(phi)));
    }

    private static (double T, double Y) Coast(double v, double m, double k)
    {
        double vt = Math.Sqrt(m * G / k);
        return (vt / G * Math.Atan(v / vt), m / (2 * k) * Math.Log(1 + v * v / (vt * vt)));
    }

    private static void Check(string quantity, string unit, double expected, double ours) =>
        FlightCheck.Verify(quantity, unit, expected, ours, ToTheIntegrator, SquareLawDrag);
}
