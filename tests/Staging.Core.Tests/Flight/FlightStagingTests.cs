using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class FlightStagingTests
{
    [Fact]
    public void A_gap_is_asked_with_the_state_at_burn_through()
    {
        BurnThroughState? asked = null;
        FlightRun run = TwoStages(Gap(s =>
        {
            asked = s;
            return GapIgnitionResult.Lit(Seconds(0.015), Seconds(0.018), "lit");
        })).Flown();
        FlightEvent burnThrough = run.Main.The(FlightEventKind.BurnThrough);
        Assert.NotNull(asked);
        Assert.Equal(0.85, asked.Time.Seconds);
        Assert.Equal(burnThrough.After.Velocity, asked.Speed);
        Assert.Equal(Sustainer(Contact()).LoadedMass.Kilograms, asked.MassAhead.Kilograms, 12);
        Assert.Equal(Booster().BurntMass.Kilograms, asked.MassBehind.Kilograms, 12);
        double altitude = 200 + asked.Height.Meters;
        Assert.Equal(StandardAtmosphere.Us1976.At(altitude).Pressure_Pa, asked.AirPressure.Pascals, 6);
        Assert.Equal(0, asked.ThrustBehind.Newtons, 12);
        Assert.True(asked.DragAhead.Newtons > 0);
        Assert.Equal(0.85 + 0.015, run.Main.The(FlightEventKind.Ignition, "sustainer").Time.Seconds);
        Assert.Equal(0.85 + 0.018, run.Main.The(FlightEventKind.Separation).Time.Seconds);
        StagingReport staging = Assert.Single(run.Stagings);
        Assert.True(staging.Lit);
        Assert.Equal("lit", staging.Reason);
    }

    /// <summary>A late ignition starts from the nominal burn-through: the gap is not asked again, and its details are handed on as they are.</summary>
    [Fact]
    public void A_gap_is_asked_once_for_the_flight_and_its_failures()
    {
        int times = 0;
        object details = new();
        FlightRun run = TwoStages(Gap(_ =>
        {
            times++;
            return GapIgnitionResult.Lit(Seconds(0.015), Seconds(0.018), "lit", details);
        })).Fly(new FlightOptions { Scope = FlightScope.Everything, LateIgnition = Seconds(0.3) }, cancellationToken: TestContext.Current.CancellationToken);
        FailureCase late = Assert.Single(run.FailureCases, f => f.Kind == FailureKind.LitLate);
        Assert.Equal(run.Stagings[0].Ignition!.Value.Seconds + 0.3, late.Bodies[0].The(FlightEventKind.Ignition, "sustainer").Time.Seconds, 1e-12);
        Assert.Equal(1, times);
        Assert.Same(details, run.Stagings[0].Details);
    }

    [Fact]
    public void Burn_through_may_come_before_the_end_of_the_thrust_curve()
    {
        BurnThroughState? asked = null;
        Stage booster = Booster() with { Motor = Motor(new MotorForwardEnd.BurnsThrough { After = Seconds(0.8) }) };
        FlightRun run = Plan(booster, Sustainer(Gap(s =>
        {
            asked = s;
            return GapIgnitionResult.Lit(Seconds(0.01), Seconds(0.02), "lit");
        }))).Flown();
        Assert.Equal(8, asked!.ThrustBehind.Newtons, 9);
        Assert.Contains(run.Bodies[1].Events, e => e.Kind == FlightEventKind.Burnout);
        Assert.True(Math.Abs(run.MassResidual()) < 1e-14);
    }

    [Fact]
    public void A_cold_gap_that_stays_joined_brings_down_the_whole_stack()
    {
        FlightRun run = TwoStages(Gap(_ => GapIgnitionResult.NotLit(null, "too cool"))).Flown();
        BodyFlight only = Assert.Single(run.Bodies);
        Assert.Equal("booster + sustainer", only.Name);
        Assert.Equal("too cool", only.The(FlightEventKind.IgnitionRefused).Note);
        Assert.False(run.Stagings[0].Lit);
        Assert.Null(run.Stagings[0].Separation);
        Assert.Null(only.Find(FlightEventKind.DeviceOpens));
        Assert.True(only.Landing().KineticEnergy.Joules > 20);
    }

    [Fact]
    public void A_cold_gap_that_parts_brings_down_two_pieces()
    {
        FlightRun run = TwoStages(Gap(_ => GapIgnitionResult.NotLit(Seconds(0.004), "pushed apart first"))).Flown();
        Assert.Equal(["sustainer", "booster"], run.Bodies.Select(b => b.Name));
        Assert.Null(run.Main.Find(FlightEventKind.Ignition, "sustainer"));
        Assert.Equal(0.854, run.Stagings[0].Separation!.Value.Seconds, 12);
    }

    [Fact]
    public void The_unlit_cases_are_always_computed()
    {
        FlightRun run = TwoStages().Flown();
        Assert.Equal([FailureKind.UnlitAndJoined, FailureKind.UnlitAndParted], run.FailureCases.Select(b => b.Kind).Take(2));
        BodyFlight joined = Assert.Single(run.FailureCases[0].Bodies);
        Assert.Equal("booster + sustainer", joined.Name);
        Assert.Equal(0.85, joined.Start.Seconds);
        Assert.Equal(joined, run.FailureCases[0].HardestLanding);
        Assert.Equal(["sustainer", "booster"], run.FailureCases[1].Bodies.Select(b => b.Name));
        double unlit = run.FailureCases[1].HardestLanding!.Landing().KineticEnergy.Joules;
        Assert.True(unlit > 10 * run.Main.Landing().KineticEnergy.Joules);
        Assert.Equal(0.87, run.FailureCases[1].Bodies[0].The(FlightEventKind.Separation).Time.Seconds);
    }

    [Fact]
    public void Apogee_electronics_open_a_parachute_in_the_unlit_case_too()
    {
        Stage sustainer = Sustainer(Contact()) with
        {
            Recovery = Recovery.Parachute(Area.FromSquareMeters(0.06), DeploymentTrigger.AtApogee(Seconds(0.5))),
        };
        FlightRun run = Plan(Booster(), sustainer).Flown();
        FlightEvent apogee = run.FailureCases[0].Bodies[0].The(FlightEventKind.Apogee);
        Assert.Equal(apogee.Time.Seconds + 0.5, run.FailureCases[0].Bodies[0].The(FlightEventKind.DeviceOpens).Time.Seconds, 12);
        Assert.True(run.FailureCases[0].Bodies[0].Landing().Speed.MetersPerSecond < 7);
    }

    [Fact]
    public void A_timer_lights_the_stage_after_a_coast()
    {
        FlightRun run = TwoStages(Timer(1.5)).Flown();
        FlightEvent ignition = run.Main.The(FlightEventKind.Ignition, "sustainer");
        Assert.Equal(0.85 + 1.5 + 0.1, ignition.Time.Seconds);
        Assert.Equal(ignition.Time, run.Main.The(FlightEventKind.Separation).Time);
        Assert.True(run.Stagings[0].Lit);
    }

    [Fact]
    public void A_timer_from_lift_off_counts_from_the_located_lift_off()
    {
        FlightRun run = TwoStages(Timer(2, from: TimerStart.LiftOff)).Flown();
        double liftOff = run.Main.The(FlightEventKind.LiftOff).Time.Seconds;
        Assert.Equal(liftOff + 2.1, run.Main.The(FlightEventKind.Ignition, "sustainer").Time.Seconds, 12);
    }

    [Fact]
    public void Separation_after_burnout_comes_before_the_timer()
    {
        FlightRun run = TwoStages(Timer(1, separation: Seconds(0.3), from: TimerStart.Separation)).Flown();
        Assert.Equal(0.85 + 0.3, run.Main.The(FlightEventKind.Separation).Time.Seconds);
        Assert.Equal(0.85 + 0.3 + 1 + 0.1, run.Main.The(FlightEventKind.Ignition, "sustainer").Time.Seconds, 12);
    }

    [Theory]
    [InlineData("speed", "200.00 m/s or more.")]
    [InlineData("height", " 500.0 m or more.")]
    [InlineData("ceiling", " 20.0 m or less.")]
    [InlineData("band", " 500.0 to 600.0 m.")]
    [InlineData("early", " 9.000 s or more.")]
    [InlineData("late", " 1.000 s or less.")]
    [InlineData("tilt", " 20.0 deg or less.")]
    public void A_guard_that_refuses_leaves_the_motor_cold(string guard, string asked)
    {
        ElectronicsGuards guards = guard switch
        {
            "speed" => new() { MinSpeed = Speed.FromMetersPerSecond(200) },
            "height" => new() { MinHeight = Length.FromMeters(500) },
            "ceiling" => new() { MaxHeight = Length.FromMeters(20) },
            "band" => new() { MinHeight = Length.FromMeters(500), MaxHeight = Length.FromMeters(600) },
            "early" => new() { Earliest = Seconds(9) },
            "late" => new() { Latest = Seconds(1) },
            _ => new() { MaxTilt = Angle.FromDegrees(20) },
        };
        FlightPlan plan = TwoStages(Timer(1, guards)) with
        {
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(75) },
        };
        FlightRun run = plan.Flown();
        Assert.False(run.Stagings[0].Lit);
        Assert.EndsWith(asked, run.Stagings[0].Reason, StringComparison.Ordinal);
        Assert.Null(run.Main.Find(FlightEventKind.Ignition, "sustainer"));
        Assert.Equal("booster + sustainer", run.Main.Name);
    }

    [Fact]
    public void Guards_that_agree_let_the_motor_light()
    {
        var guards = new ElectronicsGuards
        {
            MinSpeed = Speed.FromMetersPerSecond(20),
            MinHeight = Length.FromMeters(20),
            MaxHeight = Length.FromMeters(500),
            Earliest = Seconds(0.5),
            Latest = Seconds(3),
            MaxTilt = Angle.FromDegrees(1),
        };
        Assert.True(TwoStages(Timer(1, guards)).Flown().Stagings[0].Lit);
    }

    [Fact]
    public void Three_stages_drop_two_boosters_and_give_three_failure_cases_a_staging()
    {
        FlightRun run = Plan(Booster("first"), Booster("second", Contact()), Sustainer(Contact())).Flown();
        Assert.Equal(["sustainer", "first", "second"], run.Bodies.Select(b => b.Name));
        Assert.Equal(2, run.Stagings.Length);
        Assert.Equal(3 + 3 + 1, run.FailureCases.Length);
        Assert.True(Math.Abs(run.MassResidual()) < 1e-14);
        Assert.Equal("first + second + sustainer", run.FailureCases[0].Bodies[0].Name);
        Assert.Equal("second + sustainer", run.FailureCases[3].Bodies[0].Name);
        Assert.Equal(["second + sustainer", "first"], run.FailureCases[1].Bodies.Select(b => b.Name));
    }

    [Fact]
    public void A_cluster_pushes_and_weighs_as_many_motors()
    {
        FlightRun run = Plan(Sustainer(new StageIgnition.AtLaunch()) with { MotorCount = 3 }).Flown();
        Assert.Equal(60, run.Main.At(Seconds(0.15)).Thrust.Newtons, 9);
        Assert.Equal(0.040 + 3 * 0.021, run.Plan.LiftOffMass.Kilograms, 12);
        Assert.Equal(0.030, run.Bodies.Sum(b => b.BurntPropellant.Kilograms), 12);
    }

    [Fact]
    public void Motors_of_two_kinds_push_together_and_lose_their_own_propellant()
    {
        // A late, short second motor: its curve starts and ends with a jump between the corners of the main one.
        ThrustHistory other = ThrustHistory.FromColumns([0.1, 0.4], [5, 3]);
        Motor beside = Motor(new MotorForwardEnd.Plugged(), other, 0.004);
        Stage stage = Sustainer(new StageIgnition.AtLaunch()) with { ParallelMotors = [new MotorGroup { Motor = beside, Count = 2 }] };
        FlightRun run = Plan(stage).Flown();
        Assert.Equal(0.040 + 0.021 + 2 * 0.015, run.Plan.LiftOffMass.Kilograms, 12);
        foreach (double t in (ReadOnlySpan<double>)[0.07, 0.1, 0.15, 0.22, 0.3999])
        {
            FlightState state = run.Main.At(Seconds(t));
            Assert.Equal(Curve.At(Seconds(t)).Newtons + 2 * other.At(Seconds(t)).Newtons, state.Thrust.Newtons, 9);
            double burnt = 0.010 * (Curve.ImpulseUntil(Seconds(t)) / Curve.TotalImpulse) + 2 * 0.004 * (other.ImpulseUntil(Seconds(t)) / other.TotalImpulse);
            Assert.Equal(run.Plan.LiftOffMass.Kilograms - burnt, state.Mass.Kilograms, 12);
        }

        Assert.Equal(0.018, run.Bodies.Sum(b => b.BurntPropellant.Kilograms), 12);
        Assert.True(Math.Abs(run.MassResidual()) < 1e-14);
        Assert.Equal(0.85 + 4, run.Main.The(FlightEventKind.Ejection).Time.Seconds, 12);
    }

    [Fact]
    public void The_delay_counts_from_the_main_motor_and_burnout_is_that_of_the_last()
    {
        Motor beside = Motor(new MotorForwardEnd.Plugged(), ThrustHistory.FromColumns([0, 2], [2, 2]), 0.004);
        FlightRun run = Plan(Sustainer(new StageIgnition.AtLaunch()) with { ParallelMotors = [new MotorGroup { Motor = beside, Count = 1 }] }).Flown();
        Assert.Equal(2, run.Main.The(FlightEventKind.Burnout).Time.Seconds);
        Assert.Equal(0.85 + 4, run.Main.The(FlightEventKind.Ejection).Time.Seconds, 12);
    }

    [Fact]
    public void Two_equal_motors_fly_as_a_cluster_however_they_are_written()
    {
        Stage stage = Sustainer(new StageIgnition.AtLaunch());
        FlightRun cluster = Plan(stage with { MotorCount = 2 }).Flown();
        FlightRun parallel = Plan(stage with { ParallelMotors = [new MotorGroup { Motor = stage.Motor, Count = 1 }] }).Flown();
        Assert.Equal(cluster.Apogee!.Value.Meters, parallel.Apogee!.Value.Meters, 9);
    }

    /// <summary>A motor tube that slides out rearwards at staging and lets a streamer go: the lower piece is slowed from then on.</summary>
    [Fact]
    public void A_motor_tube_that_slid_out_comes_down_on_its_streamer()
    {
        Stage booster = Booster() with
        {
            Recovery = Recovery.Streamer(Area.FromSquareMeters(0.008), DeploymentTrigger.AtSeparation(Seconds(0.2))),
        };
        BodyFlight piece = Plan(booster, Sustainer(Contact())).Flown().Bodies[1];
        Assert.Equal(0.87 + 0.2, piece.The(FlightEventKind.DeviceOpens).Time.Seconds, 12);
        double settled = Math.Sqrt(2 * booster.BurntMass.Kilograms * 9.8 / (1.2 * 0.008));
        Assert.Equal(settled, piece.Landing().Speed.MetersPerSecond, 0.02 * settled);
    }

    /// <summary>Parted on a long guide while it still moves, the burnt booster goes on as a thrown body: as high as its speed carries it, less a little drag.</summary>
    [Fact]
    public void A_booster_dropped_on_the_guide_goes_on_by_its_speed()
    {
        Stage booster = Booster() with
        {
            Motor = Motor(new MotorForwardEnd.BurnsThrough(), ThrustHistory.FromColumns([0, 0.05, 0.1], [0, 20, 0])),
            Recovery = Recovery.Ballistic,
        };
        FlightPlan plan = Plan(booster, Sustainer(Contact())) with { Guide = LaunchGuide.Vertical(Length.FromMeters(5)) };
        BodyFlight dropped = plan.Flown().Bodies[1];
        FlightState parted = dropped.The(FlightEventKind.Separation).After;
        Assert.InRange(parted.Height.Meters, 0.1, 4);
        double v = parted.Velocity.MetersPerSecond;
        Assert.InRange((dropped.Apogee!.Value - parted.Height).Meters / (v * v / (2 * 9.8)), 0.9, 1);
    }

    /// <summary>A middle stage that its timer lights after apogee burns through nose down: the air meets the nose there too, and presses the stages together.</summary>
    [Fact]
    public void A_burn_through_on_the_way_down_has_drag_against_the_nose()
    {
        BurnThroughState? seen = null;
        Stage middle = Booster("middle", Timer(1, from: TimerStart.Apogee));
        Stage top = Sustainer(Gap(state =>
        {
            seen = state;
            return GapIgnitionResult.NotLit(null, "only looked at");
        }));
        FlightRun run = Plan(Booster(), middle, top).Flown();
        Assert.True(seen!.Time > run.Main.ApogeeTime);
        Assert.True(seen.DragAhead.Newtons > 0.1);
        Assert.True(seen.DragBehind.Newtons >= 0);
    }
}
