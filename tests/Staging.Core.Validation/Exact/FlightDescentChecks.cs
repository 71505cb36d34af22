using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Exact;

/// <summary>Falls from rest at apogee with square-law drag in uniform air; the settled ones pass through the quasi-steady descent.</summary>
public class FlightDescentChecks
{
    private const double G = 9.80665;
    private static readonly Provenance FallFromRest = new()
    {
        Source = "Fall from rest with square-law drag, closed form of mechanics textbooks",
        Locator = "v^2 = vt^2 (1 - exp(-2 g h/vt^2)); t = (vt/g) arcosh(exp(g h/vt^2)); vt^2 = 2 m g/(rho CdA)",
        How = Evidence.ComputedFromFormula,
    };

    [Theory]
    [InlineData(0.05, 0.0547)]
    [InlineData(0.1, 0.1)]
    [InlineData(0.03, 0.01)]
    [InlineData(0.5, 0.8)]
    [InlineData(0.05, 0.00024)]
    public void Fall_from_rest(double m, double dragArea)
    {
        const double rho = 1.225;
        var recovery = Recovery.Parachute(Area.FromSquareMeters(dragArea), DeploymentTrigger.AtApogee(Duration.FromSeconds(0)));
        DragTable drag = DragTable.Constant(Area.FromSquareMeters(0.0005), 0.5);
        FlightRun run = Simple.Plan(rho, Simple.Stage("body", m, 0, 20 * m * G, 0.25, drag, new StageIgnition.AtLaunch(), recovery))
            .Flown(new FlightOptions { Solver = new() { RelativeTolerance = 1e-10, ScaledAbsoluteTolerance = 1e-12 } });
        double h = run.Apogee!.Value.Meters, vt = Math.Sqrt(2 * m * G / (rho * dragArea));
        var landed = Assert.IsType<FlightOutcome.Landed>(run.Main.Outcome);
        string name = $"{m} kg, drag area {dragArea} m2";
        Check($"landing speed, {name}", "m/s", vt * Math.Sqrt(1 - Math.Exp(-2 * G * h / (vt * vt))), landed.Speed.MetersPerSecond);
        Check($"time of descent from apogee, {name}", "s", vt / G * Math.Acosh(Math.Exp(G * h / (vt * vt))), landed.Time.Seconds - run.Main.ApogeeTime!.Value.Seconds);
    }

    /// <summary>Carried along at the speed of the wind for as long as the fall from rest lasts.</summary>
    [Theory]
    [InlineData(0.05, 0.0547, 4)]
    [InlineData(0.03, 0.01, 8)]
    public void Drift(double m, double dragArea, double wind)
    {
        const double rho = 1.225;
        var recovery = Recovery.Parachute(Area.FromSquareMeters(dragArea), DeploymentTrigger.AtApogee(Duration.FromSeconds(0)));
        FlightPlan plan = Simple.Plan(rho, Simple.Stage("body", m, 0, 20 * m * G, 0.25, Simple.NoDrag, new StageIgnition.AtLaunch(), recovery));
        FlightRun run = (plan with { Site = plan.Site with { Wind = Speed.FromMetersPerSecond(wind) } })
            .Flown(new FlightOptions { Solver = new() { RelativeTolerance = 1e-10, ScaledAbsoluteTolerance = 1e-12 } });
        double h = run.Apogee!.Value.Meters, vt = Math.Sqrt(2 * m * G / (rho * dragArea));
        Check($"drift of {m} kg under {dragArea} m2 in a wind of {wind} m/s", "m", wind * vt / G * Math.Acosh(Math.Exp(G * h / (vt * vt))), run.Main.DriftEstimate!.Value.Meters);
    }

    private static void Check(string quantity, string unit, double expected, double ours) =>
        FlightCheck.Verify(quantity, unit, expected, ours, Tolerance.Relative(1e-7, "integrated at a relative tolerance of 1e-10; the quadrature of the settling adds at most 1e-8"), FallFromRest);
}
