using Staging.Core.Flight;
using Staging.Core.Reviews;
using Staging.Core.Tests.Reviews;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

/// <summary>Timers from every event, decided before and after the burnout below, and what falls when they fail.</summary>
public class ElectronicStagingTests
{
    private const double IgniterLag = 0.1;

    [Theory]
    [InlineData(TimerStart.Launch, FlightEventKind.Ignition, "booster", 1.2)]
    [InlineData(TimerStart.LiftOff, FlightEventKind.LiftOff, null, 1.2)]
    [InlineData(TimerStart.GuideExit, FlightEventKind.GuideExit, null, 1.2)]
    [InlineData(TimerStart.IgnitionBelow, FlightEventKind.Ignition, "booster", 1.2)]
    [InlineData(TimerStart.BurnThroughBelow, FlightEventKind.BurnThrough, "booster", 0.2)]
    [InlineData(TimerStart.BurnoutBelow, FlightEventKind.Burnout, "booster", 0.2)]
    [InlineData(TimerStart.Apogee, FlightEventKind.Apogee, null, 0.2)]
    public void A_timer_runs_from_its_event(TimerStart from, FlightEventKind kind, string? stage, double timer)
    {
        FlightRun run = TwoStages(Timer(timer, from: from)).Flown();
        double start = run.Main.The(kind, stage).Time.Seconds;
        Assert.Equal(start + timer + IgniterLag, run.Main.The(FlightEventKind.Ignition, "sustainer").Time.Seconds, 12);
        Assert.True(Assert.Single(run.Stagings).Lit);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.78)]
    [InlineData(0.8)]
    [InlineData(1.5)]
    public void Lit_under_thrust_or_later_it_is_reported_lit_and_the_cold_cases_stay_cold(double timer)
    {
        FlightRun run = TwoStages(Timer(timer, from: TimerStart.LiftOff)).Flown();
        StagingReport staging = Assert.Single(run.Stagings);
        Assert.True(staging.Lit);
        Assert.Equal(run.Main.The(FlightEventKind.Ignition, "sustainer").Time, staging.Ignition);
        foreach (FailureKind kind in (ReadOnlySpan<FailureKind>)[FailureKind.UnlitAndJoined, FailureKind.UnlitAndParted])
        {
            FailureCase cold = run.FailureCases.Single(f => f.Kind == kind);
            Assert.All(cold.Bodies, b => Assert.Null(b.Find(FlightEventKind.Ignition, "sustainer")));
            Assert.True(cold.Bodies.Max(b => b.Apogee?.Meters ?? 0) < 0.7 * run.Apogee!.Value.Meters);
        }

        Assert.True(TestPlans.Of(TwoStages(Timer(timer, from: TimerStart.LiftOff))).Review(cases: 0).EveryStageLights);
    }

    /// <summary>Parted by its own charge after the burnout below: at that time where the stage stays cold and parts, never where both stay joined.</summary>
    [Fact]
    public void A_charge_that_parts_after_burnout_belongs_to_the_case_that_parts()
    {
        FlightRun run = TwoStages(Timer(0.5, separation: Seconds(0.2))).Flown();
        BodyFlight joined = Assert.Single(run.FailureCases.Single(f => f.Kind == FailureKind.UnlitAndJoined).Bodies);
        Assert.Null(joined.Find(FlightEventKind.Separation));
        Assert.All([run.Main, run.FailureCases.Single(f => f.Kind == FailureKind.UnlitAndParted).Bodies[0]],
            b => Assert.Equal(0.85 + 0.2, b.The(FlightEventKind.Separation).Time.Seconds, 12));
    }

    [Fact]
    public void A_refusal_before_the_burnout_below_is_reported_with_its_reason()
    {
        var guards = new ElectronicsGuards { MinHeight = Length.FromMeters(500) };
        StagingReport staging = Assert.Single(TwoStages(Timer(0.5, guards, from: TimerStart.LiftOff)).Flown().Stagings);
        Assert.False(staging.Lit);
        Assert.Contains("the guard requires 500.0", staging.Reason, StringComparison.Ordinal);
    }

    /// <summary>A timer from launch that ends while the booster burns below a stack too heavy to lift.</summary>
    [Theory]
    [InlineData(0.2, null)]
    [InlineData(1.0, null)]
    [InlineData(null, 0.2)]
    [InlineData(null, 10.0)]
    public void A_guard_on_the_time_from_lift_off_refuses_on_the_guide(double? earliest, double? latest)
    {
        var guards = new ElectronicsGuards { Earliest = earliest is { } e ? Seconds(e) : null, Latest = latest is { } l ? Seconds(l) : null };
        Stage heavy = Booster() with { StructureMass = Mass.FromKilograms(5) };
        FlightRun Run(ElectronicsGuards asked) => Plan(heavy, Sustainer(Timer(0.5, asked, from: TimerStart.Launch))).Flown();
        Assert.True(Assert.Single(Run(ElectronicsGuards.None).Stagings).Lit, "unguarded, it lights where it stands");
        StagingReport staging = Assert.Single(Run(guards).Stagings);
        Assert.False(staging.Lit);
        Assert.Equal("The stack has not lifted off; the guard counts from lift-off.", staging.Reason);
    }

    /// <summary>Past apogee the nose points down, off a vertical guide as off any other: a guard on tilt lets nothing light then.</summary>
    [Theory]
    [InlineData(90)]
    [InlineData(85)]
    public void A_guard_on_tilt_refuses_past_apogee(double elevation)
    {
        FlightPlan plan = TwoStages(Timer(7, new ElectronicsGuards { MaxTilt = Angle.FromDegrees(90) }, from: TimerStart.LiftOff)) with
        {
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(elevation) },
        };
        FlightRun run = plan.Flown();
        Assert.True(run.Main.ApogeeTime < Seconds(7), "the timer ends past apogee");
        StagingReport staging = Assert.Single(run.Stagings);
        Assert.False(staging.Lit);
        Assert.Contains("180.0 deg", staging.Reason, StringComparison.Ordinal);
    }

    /// <summary>Bending goes on from the nominal flight: lit later and slower, the stack leans more than in the flight that is refused already.</summary>
    [Fact]
    public void A_late_stage_leans_no_less_than_the_nominal_flight()
    {
        FlightPlan plan = Plan(
            Booster(),
            Booster("second", Contact()),
            Sustainer(Timer(0.2, new ElectronicsGuards { MaxTilt = Angle.FromDegrees(14) }))) with
        {
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(80) },
        };
        FlightRun run = plan.Flown();
        Assert.Contains("tilt", run.Stagings[1].Reason, StringComparison.Ordinal);
        FailureCase late = run.FailureCases.Single(f => f.Kind == FailureKind.LitLate && f.Stage == "second");
        Assert.All(late.Bodies, b => Assert.Null(b.Find(FlightEventKind.Ignition, "sustainer")));
    }

    [Fact]
    public void A_review_follows_every_failure_whatever_the_scope()
    {
        var plan = TestPlans.Of(TwoStages());
        StagingReview review = plan.Review(new FlightOptions { Scope = FlightScope.UppermostStage }, cases: 0);
        Assert.Equal(plan.Review(cases: 0).Cautions.Select(c => c.Code), review.Cautions.Select(c => c.Code));
    }

    /// <summary>A record that begins on the way down and burns there: thrust pushes towards the ground and its work counts.</summary>
    [Fact]
    public void Energy_is_accounted_for_where_a_motor_burns_on_the_way_down()
    {
        Stage stage = Sustainer(new StageIgnition.AtLaunch()) with
        {
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(10) }),
            ParallelMotors = [new MotorGroup { Motor = Motor(new MotorForwardEnd.Plugged(), ThrustHistory.FromColumns([0, 0.1, 29, 30], [0, 0.2, 0.2, 0])), Count = 1 }],
        };
        BodyFlight falling = Assert.Single(Assert.Single(Plan(stage).Flown().FailureCases).Bodies);
        Assert.True(falling.At(falling.Start).Velocity.MetersPerSecond < 0);
        EnergyLedger ledger = falling.EnergyLedger();
        Assert.True(ledger.Thrust.Joules > 1);
        Assert.InRange(ledger.Residual, -1e-6, 1e-6);
    }

    /// <summary>
    /// Under a canopy the kinetic energy hardly changes, while weight and drag do all the work: the residual has to stay small beside them,
    /// also where the gain of kinetic energy goes through zero.
    /// </summary>
    [Fact]
    public void A_body_under_a_canopy_has_a_small_residual()
    {
        Stage booster = Booster() with
        {
            Recovery = Recovery.Parachute(Area.FromSquareMeters(0.05), DeploymentTrigger.AtApogee(Seconds(0.2))),
        };
        double smallestGain = double.PositiveInfinity;
        for (double timer = 0.05; timer < 1; timer += 0.05)
        {
            EnergyLedger ledger = Plan(booster, Sustainer(Timer(timer, from: TimerStart.Apogee))).Flown().Bodies[1].EnergyLedger();
            smallestGain = Math.Min(smallestGain, Math.Abs(ledger.KineticGain.Joules / ledger.Gravity.Joules));
            Assert.True(Math.Abs(ledger.Residual) < 2e-4, $"The timer is {timer:F2} s: {ledger}.");
        }

        Assert.True(smallestGain < 1e-3, $"No case has a small gain; the smallest is {smallestGain:G3}.");
    }

    [Fact]
    public void A_stack_that_never_moves_has_an_empty_ledger_or_no_course()
    {
        FlightPlan heavy = TwoStages() with { Payload = Mass.FromKilograms(20) };
        BodyFlight stuck = heavy.Flown().Main;
        Assert.IsType<FlightOutcome.NeverLeftGuide>(stuck.Outcome);
        Assert.Equal(0, stuck.EnergyLedger().Residual);
    }

    [Fact]
    public void A_dropped_stage_is_never_slower_at_its_fastest_than_at_its_start()
    {
        FlightRun run = TwoStages().Flown();
        BodyFlight booster = run.Bodies[1];
        Assert.True(booster.MaximumSpeed >= booster.At(booster.Start).Velocity);
    }

    /// <summary>Electronics that wait for apogee open at once when their stage parts on the way down.</summary>
    [Fact]
    public void A_stage_that_parts_after_apogee_opens_its_canopy()
    {
        Stage booster = Booster() with
        {
            Recovery = Recovery.Parachute(Area.FromSquareMeters(0.05), DeploymentTrigger.AtApogee(Seconds(0.2))),
        };
        FlightRun run = Plan(booster, Sustainer(Timer(0.5, from: TimerStart.Apogee))).Flown();
        BodyFlight dropped = run.Bodies[1];
        double parts = dropped.The(FlightEventKind.Separation).Time.Seconds;
        Assert.Equal(parts + 0.2, dropped.The(FlightEventKind.DeviceOpens).Time.Seconds, 9);
        Assert.True(dropped.Landing().Speed.MetersPerSecond < 8);
    }
}
