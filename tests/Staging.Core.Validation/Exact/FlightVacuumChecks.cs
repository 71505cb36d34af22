using Staging.Core.Flight;
using UnitsNet;

namespace Staging.Core.Validation.Exact;

/// <summary>Flights without air: the rocket equation, the sum over stages, and free flight.</summary>
public class FlightVacuumChecks
{
    private const double G = 9.80665;
    private static readonly Provenance RocketEquation = Formula("K. E. Tsiolkovsky's rocket equation with gravity", "v = c ln R - g t; y = c t (1 - ln R/(R - 1)) - g t^2/2");
    private static readonly Provenance Ideal = Formula("Multistage ideal velocity, sum of c ln R over the stages", "gravity loss g t added back");
    private static readonly Provenance FreeFlight = Formula("Conservation of energy in an inverse-square field", "v^2/2 = g0 R^2 (1/r0 - 1/r1)");
    private static readonly Provenance Throw = Formula("K. E. Tsiolkovsky's rocket equation and the throw in a vacuum", "t = v/g; v - g t");
    private static readonly FlightOptions Tight = new() { Solver = new() { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-13 } };

    [Theory]
    [InlineData("c 800 m/s, 50 g", 800, 0.05, 0.006, 1.0)]
    [InlineData("c 800 m/s, 90 g", 800, 0.09, 0.012, 0.9)]
    [InlineData("c 2000 m/s, 15 t", 2000, 15000, 125, 70)]
    public void Burning_off_mass_in_a_vacuum(string name, double c, double m0, double flow, double t)
    {
        double R = m0 / (m0 - flow * t), v = c * Math.Log(R) - G * t, y = c * t * (1 - Math.Log(R) / (R - 1)) - 0.5 * G * t * t;
        FlightRun run = Simple.Plan(0, Simple.Stage("stage", m0 - flow * t, flow * t, c * flow, t, Simple.NoDrag, new StageIgnition.AtLaunch())).Flown(Tight);
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout)!;
        Check($"speed at burnout in a vacuum, {name}", "m/s", v, burnout.After.Velocity.MetersPerSecond, RocketEquation);
        Check($"height at burnout in a vacuum, {name}", "m", y, burnout.After.Height.Meters, RocketEquation);
        Check($"apogee in a vacuum, {name}", "m", y + v * v / (2 * G), run.Apogee!.Value.Meters, RocketEquation);
        Check($"speed of impact in a vacuum, {name}", "m/s", Math.Sqrt(2 * G * y + v * v), ((FlightOutcome.Landed)run.Main.Outcome).Speed.MetersPerSecond, RocketEquation);
    }

    /// <summary>The ideal delay lasts from burnout to the top of a throw, v/g; a delay d ejects at v - g d.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(12)]
    public void Delay_in_a_vacuum(double delay)
    {
        const double c = 800, m0 = 0.05, flow = 0.006;
        FlightPlan plan = Simple.Plan(0, Simple.Stage("stage", m0 - flow, flow, c * flow, 1, Simple.NoDrag, new StageIgnition.AtLaunch()));
        DelayOption option = Assert.Single(plan.ChooseDelay([Duration.FromSeconds(delay)], Tight));
        double v = c * Math.Log(m0 / (m0 - flow)) - G;
        Check($"ideal delay in a vacuum, asked for {delay} s", "s", v / G, option.Ideal.Seconds, Throw);
        Check($"speed at ejection in a vacuum, delay of {delay} s", "m/s", Math.Abs(v - G * delay), option.Speed.MetersPerSecond, Throw);
    }

    [Fact]
    public void A_printed_textbook_value()
    {
        FlightPlan plan = Simple.Plan(0, Simple.Stage("stage", 15000 - 8750, 8750, 250_000, 70, Simple.NoDrag, new StageIgnition.AtLaunch()));
        plan = plan with { Site = plan.Site with { Gravity = plan.Site.Gravity with { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.81) } } };
        FlightRun run = plan.Flown(Tight);
        new OutsideCheck
        {
            Floor = "Flight",
            Quantity = "speed at burnout, 15 t rocket, 125 kg/s for 70 s at 2000 m/s",
            Unit = "m/s",
            Expected = 1064.24,
            Ours = run.Main.Find(FlightEventKind.Burnout)!.After.Velocity.MetersPerSecond,
            Within = Tolerance.Printed(2),
            Provenance = new Provenance { Source = "P. Murugaperumal, textbook on rocket propulsion, worked example", Locator = "Ex. 7.6, g = 9.81 m/s2", How = Evidence.SeenInSource },
        }.Verify();
    }

    [Fact]
    public void Two_stages_reach_the_sum_of_their_ideal_speeds()
    {
        const double c = 800;
        FlightRun run = Simple.Plan(0,
            Simple.Stage("lower", 0.028, 0.012, 0.012 * c, 1, Simple.NoDrag, new StageIgnition.AtLaunch()),
            Simple.Stage("upper", 0.038, 0.012, 0.012 * c, 1, Simple.NoDrag, new StageIgnition.ByContact { Lag = Duration.FromSeconds(0) })).Flown(Tight);
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout, "upper")!;
        double ours = burnout.After.Velocity.MetersPerSecond + G * burnout.Time.Seconds;
        Check("ideal speed of two stages, 0.040 kg and 0.050 kg with 0.012 kg each, c 800 m/s", "m/s",
            c * (Math.Log(0.090 / 0.078) + Math.Log(0.050 / 0.038)), ours, Ideal);
    }

    [Fact]
    public void Free_flight_in_a_field_that_falls_with_height()
    {
        FlightPlan plan = Simple.Plan(0, Simple.Stage("stage", 1, 4, 10_000, 1, Simple.NoDrag, new StageIgnition.AtLaunch()));
        plan = plan with { Site = plan.Site with { Gravity = Gravity.Standard } };
        FlightRun run = plan.Flown(Tight);
        FlightEvent burnout = run.Main.Find(FlightEventKind.Burnout)!;
        double radius = 6_356_766, r0 = radius + burnout.After.Height.Meters, v = burnout.After.Velocity.MetersPerSecond;
        double top = 1 / (1 / r0 - v * v / (2 * G * radius * radius)) - radius;
        Check("apogee of free flight from burnout in an inverse-square field", "m", top, run.Apogee!.Value.Meters, FreeFlight);
    }

    private static Provenance Formula(string source, string locator) => new() { Source = source, Locator = locator, How = Evidence.ComputedFromFormula };

    private static void Check(string quantity, string unit, double expected, double ours, Provenance source) =>
        FlightCheck.Verify(quantity, unit, expected, ours, Tolerance.Relative(1e-8, "integrated at a relative tolerance of 1e-11"), source);
}
