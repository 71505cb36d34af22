using Staging.Core.Flight;
using Staging.Core.Gases;
using Staging.Core.Solving;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class FlightOutcomeTests
{
    [Fact]
    public void Too_heavy_to_lift_never_leaves_the_guide()
    {
        FlightRun run = (TwoStages() with { Payload = Mass.FromKilograms(5) }).Flown();
        Assert.Equal(0, Assert.IsType<FlightOutcome.NeverLeftGuide>(run.Main.Outcome).FarthestTravel.Meters);
        Assert.Null(run.Apogee);
        // The booster burns through on the pad all the same, and lights the motor above it there.
        Assert.NotNull(run.Main.Find(FlightEventKind.Ignition, "sustainer"));
        Assert.All(run.FailureCases, f => Assert.All(f.Bodies, b => Assert.IsType<FlightOutcome.NeverLeftGuide>(b.Outcome)));
        Assert.Null(run.LatestIgnition("sustainer", Angle.FromDegrees(5), Angle.FromDegrees(20)));
    }

    /// <summary>A booster that cannot lift the stack still lights the stage above it, which then flies off the pad.</summary>
    [Fact]
    public void Above_a_booster_too_weak_to_lift_the_upper_stage_leaves_the_pad_alone()
    {
        FlightRun run = Plan(Booster() with { StructureMass = Mass.FromKilograms(5) }, Sustainer(Contact())).Flown();
        Assert.Equal(0.85 + 0.02, run.Main.The(FlightEventKind.Ignition, "sustainer").Time.Seconds, 1e-9);
        Assert.True(run.Main.The(FlightEventKind.LiftOff).Time > run.Main.The(FlightEventKind.Ignition, "sustainer").Time);
        Assert.InRange(run.Apogee!.Value.Meters, 50, 1000);
        BodyFlight booster = run.Bodies.Single(b => b.Name == "booster");
        Assert.Equal(0, Assert.IsType<FlightOutcome.NeverLeftGuide>(booster.Outcome).FarthestTravel.Meters);
        Assert.InRange(run.Main.EnergyLedger().Residual, -1e-5, 1e-5);
    }

    /// <summary>Parted by a timer before the booster can lift anything: both pieces stay where they are, and the other cases are flown none the less.</summary>
    [Fact]
    public void What_parts_before_lift_off_stays_on_the_guide()
    {
        var slow = ThrustHistory.FromColumns([0, 0.5, 1], [0, 8, 0]);
        FlightRun run = Plan(
            Booster() with { Motor = Motor(new MotorForwardEnd.BurnsThrough(), slow) },
            Sustainer(Timer(0.01, from: TimerStart.Launch)) with { Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) }, ThrustHistory.FromColumns([0, 1], [0.3, 0.3])) }).Flown();
        Assert.IsType<FlightOutcome.NeverLeftGuide>(run.Main.Outcome);
        Assert.All(run.FailureCases, f => Assert.All(f.Bodies, b => Assert.IsNotType<FlightOutcome.NotSolved>(b.Outcome)));
        Assert.InRange(run.Statistics.AcceptedSteps, 1, 5000);
    }

    /// <summary>So little air that a canopy stops nothing: it falls as without one, and no series is trusted that says otherwise.</summary>
    [Theory]
    [InlineData(1e-9)]
    [InlineData(1e-8)]
    [InlineData(2.15e-8)]
    [InlineData(5e-8)]
    [InlineData(1e-7)]
    [InlineData(2e-7)]
    public void A_canopy_in_next_to_no_air_falls_freely(double rho)
    {
        foreach (double mass in (double[])[0.02, 0.05, 0.2])
        {
            FlightPlan plan = Plan(Booster(), Sustainer(Contact()) with { StructureMass = Mass.FromKilograms(mass) });
            BodyFlight flight = (plan with { Site = plan.Site with { Atmosphere = Thin(rho) } }).Flown().Main;
            double fall = Math.Sqrt(2 * 9.806 * flight.Apogee!.Value.Meters);
            Assert.InRange(flight.Landing().Speed.MetersPerSecond / fall, 0.98, 1.001);
        }

        static UniformAtmosphere Thin(double rho) => new()
        {
            Pressure = Pressure.FromPascals(rho * 287.05 * 288.15),
            Temperature = Temperature.FromKelvins(288.15),
            Density = Density.FromKilogramsPerCubicMeter(rho),
            SoundSpeed = Speed.FromMetersPerSecond(340),
        };
    }

    [Fact]
    public void Too_short_a_push_slides_back_down_the_guide()
    {
        FlightPlan plan = Plan(Sustainer(new StageIgnition.AtLaunch()) with
        {
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustHistory.FromColumns([0, 0.05, 0.1], [0, 3, 0]), 0.001),
        });
        double travel = Assert.IsType<FlightOutcome.NeverLeftGuide>(plan.Flown().Main.Outcome).FarthestTravel.Meters;
        Assert.InRange(travel, 1e-4, 1);
    }

    [Fact]
    public void Lift_off_waits_for_weight_and_friction()
    {
        FlightPlan plan = TwoStages() with
        {
            Guide = new LaunchGuide { Length = Length.FromMeters(1), Elevation = Angle.FromDegrees(70), FrictionCoefficient = 0.4, ConstantFriction = Force.FromNewtons(1) },
        };
        FlightState state = plan.Flown().Main.The(FlightEventKind.LiftOff).After;
        double angle = 70 * Math.PI / 180, g = plan.Site.Gravity.At(plan.Site.Elevation).MetersPerSecondSquared;
        double needed = state.Mass.Kilograms * g * (Math.Sin(angle) + 0.4 * Math.Cos(angle)) + 1;
        Assert.Equal(needed, state.Thrust.Newtons, 12);
    }

    [Fact]
    public void Guide_exit_speed_follows_from_constant_acceleration()
    {
        var plan = new FlightPlan
        {
            Stages = [Sustainer(new StageIgnition.AtLaunch()) with
            {
                Drag = DragTable.Constant(Area.FromSquareMeters(1), 0),
                Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustHistory.FromColumns([0, 1], [10, 10]), 0),
            }],
            Guide = new LaunchGuide { Length = Length.FromMeters(2), Elevation = Angle.FromDegrees(60), FrictionCoefficient = 0.2, ConstantFriction = Force.FromNewtons(0.5) },
            Site = new LaunchSite
            {
                Atmosphere = StandardAtmosphere.Us1976,
                Elevation = Length.FromMeters(0),
                Wind = Speed.FromMetersPerSecond(0),
                Gravity = new Gravity { AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.8), Radius = null },
            },
        };
        double angle = Math.PI / 3, m = plan.LiftOffMass.Kilograms;
        double a = (10 - 0.5) / m - 9.8 * (Math.Sin(angle) + 0.2 * Math.Cos(angle));
        FlightRun run = plan.Flown();
        Assert.Equal(Math.Sqrt(2 * a * 2), run.GuideExitSpeed!.Value.MetersPerSecond, 7);
        Assert.Equal(2 * Math.Sin(angle), run.Main.The(FlightEventKind.GuideExit).After.Height.Meters, 6);
        Assert.Equal(run.Apogee!.Value.Meters / Math.Tan(angle), run.Main.ApogeeRange!.Value.Meters, 9);
    }

    [Fact]
    public void Leaving_the_atmosphere_given_is_an_outcome()
    {
        FlightPlan plan = Plan(Sustainer(new StageIgnition.AtLaunch()) with
        {
            Drag = DragTable.Constant(Area.FromSquareMeters(4.9e-4), 0),
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustHistory.FromColumns([0, 10], [200, 200]), 0.010),
        });
        var left = Assert.IsType<FlightOutcome.LeftAtmosphere>(plan.Flown().Main.Outcome);
        Assert.True(left.Velocity.MetersPerSecond > 100);
    }

    [Fact]
    public void Still_aloft_at_the_latest_time_is_an_outcome()
    {
        FlightRun run = TwoStages().Flown(new FlightOptions { LatestTime = Seconds(4) });
        Assert.True(Assert.IsType<FlightOutcome.StillAloft>(run.Main.Outcome).Height.Meters > 50);
        Assert.Equal(4, run.Main.End.Seconds);
    }

    [Fact]
    public void A_body_under_its_canopy_is_given_up_too()
    {
        FlightRun whole = TwoStages().Flown(), cut = TwoStages().Flown(new FlightOptions { LatestTime = Seconds(60) });
        Assert.True(whole.Main.Landing().Time.Seconds > 60);
        double height = Assert.IsType<FlightOutcome.StillAloft>(cut.Main.Outcome).Height.Meters;
        // The record of the settled descent is drawn, not integrated.
        Assert.Equal(whole.Main.At(Seconds(60)).Height.Meters, height, 1e-3);
    }

    [Fact]
    public void A_failed_integration_is_an_outcome()
    {
        FlightRun run = TwoStages().Flown(new FlightOptions { Solver = new SolverOptions { MaxSteps = 10 } });
        var failed = Assert.IsType<FlightOutcome.NotSolved>(run.Main.Outcome);
        Assert.Equal(SolverFailureKind.TooManySteps, failed.Failure.Kind);
    }

    [Fact]
    public void A_cancelled_run_throws()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => TwoStages().Fly(cancellationToken: source.Token));
    }

    [Fact]
    public void Progress_ends_at_one_and_never_falls()
    {
        var reports = new List<double>();
        TwoStages().Fly(progress: new Direct(p => reports.Add(p.Fraction)), cancellationToken: TestContext.Current.CancellationToken);
        Assert.Equal(reports.Order(), reports);
        Assert.Equal(1, reports[^1]);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bits() =>
        Assert.Equal(Bits(TwoStages().Flown()), Bits(TwoStages().Flown()));

    private static IEnumerable<(double, double, double, double, double)> Bits(FlightRun run) => run.Main.Events.Select(e => e.After)
        .Select(s => (s.Time.Seconds, s.Height.Meters, s.Velocity.MetersPerSecond, s.Mass.Kilograms, s.Thrust.Newtons));

    private sealed class Direct(Action<SolveProgress> report) : IProgress<SolveProgress>
    {
        public void Report(SolveProgress value) => report(value);
    }
}
