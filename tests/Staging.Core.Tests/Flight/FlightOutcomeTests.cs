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
        Assert.Empty(run.FailureCases);
        Assert.Null(run.Apogee);
    }

    [Fact]
    public void Too_short_a_push_slides_back_down_the_guide()
    {
        FlightPlan plan = Plan(Sustainer(new StageIgnition.AtLaunch()) with
        {
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustCurve.FromColumns([0, 0.05, 0.1], [0, 3, 0]), 0.001),
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
                Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustCurve.FromColumns([0, 1], [10, 10]), 0),
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
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(1) }, ThrustCurve.FromColumns([0, 10], [200, 200]), 0.010),
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
        FlightRun run = TwoStages().Flown(new FlightOptions { Solver = new SolverOptions { MostSteps = 10 } });
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
        Assert.Equal(TwoStages().Flown().Main.Events.Select(e => e.After), TwoStages().Flown().Main.Events.Select(e => e.After));

    private sealed class Direct(Action<SolveProgress> report) : IProgress<SolveProgress>
    {
        public void Report(SolveProgress value) => report(value);
    }
}
