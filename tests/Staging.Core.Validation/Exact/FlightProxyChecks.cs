using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Exact;

/// <summary>Tilt of a gravity turn, the latest ignition it leaves, and the load of an opening device, on flights without air, or with next to none.</summary>
public class FlightProxyChecks
{
    private const double G = 9.80665, Rail = 1, Thrust = 10, Total = 0.1;

    private static readonly Provenance GravityTurn = new()
    {
        Source = "Gravity turn, d(gamma)/dt = -(g/v) cos(gamma), at a speed that grows or falls evenly",
        Locator = "asinh(tan gamma) falls by (g/a) ln(t/t0) under thrust, by -ln(1 - g t/v0) on a vertical coast",
        How = Evidence.ComputedFromFormula,
    };

    private static readonly Provenance Fall = new() { Source = "Free fall", Locator = "C_x rho/2 (g t)^2 CdA", How = Evidence.ComputedFromFormula };

    /// <summary>The guard of the electronics sees the tilt of the closed form: it refuses just below it and lets pass just above.</summary>
    [Theory]
    [InlineData(80, 0.5)]
    [InlineData(75, 1.1)]
    [InlineData(60, 1.6)]
    public void A_guard_refuses_from_the_tilt_of_the_closed_form(double elevation, double timer)
    {
        double theta = elevation * Math.PI / 180, a = Thrust / Total - G * Math.Sin(theta), exit = Math.Sqrt(2 * Rail / a);
        double tilt = 90 - Math.Atan(Math.Sinh(Math.Asinh(Math.Tan(theta)) - G / a * Math.Log(timer / exit))) * 180 / Math.PI;
        double low = 0.5 * tilt, high = 2 * tilt;
        while (high - low > 1e-9)
        {
            double guard = 0.5 * (low + high);
            if (Lights(elevation, timer, guard))
                high = guard;
            else
                low = guard;
        }

        Check($"tilt that a guard sees {timer} s after leaving at {elevation} deg", "deg", tilt, high, 2e-6, GravityTurn);
    }

    [Theory]
    [InlineData(5, 12)]
    [InlineData(2, 45)]
    public void The_latest_ignition_is_that_of_the_closed_form(double atExit, double limit)
    {
        const double burn = 1.5, a = Thrust / Total - G, v0 = a * burn;
        double exit = Math.Sqrt(2 * Rail / a);
        double bend = Math.Asinh(1 / Math.Tan(atExit * Math.PI / 180)) - Math.Asinh(1 / Math.Tan(limit * Math.PI / 180)) - G / a * Math.Log(burn / exit);
        FlightRun run = Simple.Plan(0,
            Simple.Stage("lower", 0.06, 0, Thrust, burn, Simple.NoDrag, new StageIgnition.AtLaunch()),
            Simple.Stage("upper", 0.04, 0, Thrust, 1, Simple.NoDrag, new StageIgnition.ByContact { Lag = Duration.FromSeconds(0) }))
            .Fly(new FlightOptions { Solver = new() { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-13 } }, cancellationToken: TestContext.Current.CancellationToken);
        Duration? latest = run.LatestIgnition("upper", Angle.FromDegrees(atExit), Angle.FromDegrees(limit));
        Check($"latest ignition from {atExit} to {limit} deg", "s", burn + v0 / G * (1 - Math.Exp(-bend)), latest!.Value.Seconds, 1e-6, GravityTurn);
    }

    [Fact]
    public void The_load_at_opening_is_that_of_free_fall()
    {
        const double rho = 1e-7, area = 0.05, fall = 2;
        var chute = Recovery.Parachute(Area.FromSquareMeters(area), DeploymentTrigger.AtApogee(Duration.FromSeconds(fall)));
        FlightRun run = Simple.Plan(rho, Simple.Stage("stage", 0.1, 0, 10, 1, Simple.NoDrag, new StageIgnition.AtLaunch(), chute)).Flown();
        Check("load of a device that opens after 2 s of free fall", "N", 1.7 * 0.5 * rho * G * G * fall * fall * area, run.Main.OpeningLoadEstimate(1.7)!.Value.Newtons, 1e-8, Fall);
    }

    private static bool Lights(double elevation, double timer, double guard)
    {
        var electronics = new StageIgnition.ByElectronics
        {
            From = TimerStart.LiftOff,
            Timer = Duration.FromSeconds(timer),
            IgniterLag = Duration.FromSeconds(0),
            Guards = new ElectronicsGuards { MaxTilt = Angle.FromDegrees(guard) },
        };
        FlightPlan plan = Simple.Plan(0,
            Simple.Stage("lower", 0.06, 0, Thrust, 2, Simple.NoDrag, new StageIgnition.AtLaunch()),
            Simple.Stage("upper", 0.04, 0, Thrust, 1, Simple.NoDrag, electronics));
        plan = plan with { Guide = LaunchGuide.Vertical(Length.FromMeters(Rail)) with { Elevation = Angle.FromDegrees(elevation) } };
        return plan.Flown().Main.Find(FlightEventKind.IgnitionRefused) is null;
    }

    private static void Check(string quantity, string unit, double expected, double ours, double within, Provenance source) =>
        FlightCheck.Verify(quantity, unit, expected, ours, Tolerance.Relative(within, "quadrature of a proxy"), source);
}
