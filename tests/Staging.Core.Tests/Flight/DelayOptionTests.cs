using System.Collections.Immutable;
using Staging.Core.Flight;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class DelayOptionTests
{
    private static readonly ImmutableArray<DelayOption> Options =
        TwoStages().ChooseDelay([Seconds(0), Seconds(3), Seconds(5), Seconds(7), Seconds(40)], cancellationToken: TestContext.Current.CancellationToken);

    [Fact]
    public void The_best_delay_is_the_one_nearest_apogee_in_speed()
    {
        Assert.Equal(Options.Min(o => o.Speed.MetersPerSecond), Options[0].Speed.MetersPerSecond);
        Assert.Equal([0, 3, 5, 7, 40], Options.Select(o => o.Delay.Seconds).Order());
        FlightRun run = TwoStages().Flown();
        double free = run.FailureCases.Single(b => b.Kind == FailureKind.EjectionFailure).Bodies[0].ApogeeTime!.Value.Seconds;
        Assert.Equal(free - run.Main.The(FlightEventKind.Burnout, "sustainer").Time.Seconds, Options[0].Ideal.Seconds, 6);
    }

    [Fact]
    public void An_option_agrees_with_the_flight_that_uses_it()
    {
        DelayOption option = Options.Single(o => o.Delay.Seconds == 3);
        Stage top = Sustainer(Contact()) with { Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(3) }) };
        FlightEvent ejection = Plan(Booster(), top).Flown().Main.The(FlightEventKind.Ejection);
        Assert.Equal(ejection.Before.Velocity.MetersPerSecond, option.Speed.MetersPerSecond, 6);
        Assert.Equal(ejection.Before.Height.Meters, option.Height.Meters, 6);
        Assert.True(option.SpeedWithTolerance > option.Speed);
    }

    /// <summary>A delay counts from the end of the main motor's curve, though another motor burns on.</summary>
    [Fact]
    public void An_option_agrees_with_the_flight_where_a_parallel_motor_burns_longer()
    {
        Stage top = Sustainer(Contact()) with
        {
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) }),
            ParallelMotors = [new MotorGroup { Motor = Motor(new MotorForwardEnd.Plugged(), ThrustHistory.FromColumns([0, 0.1, 1.9, 2], [0, 3, 3, 0])), Count = 1 }],
        };
        FlightPlan plan = Plan(Booster(), top);
        DelayOption option = plan.ChooseDelay([Seconds(4)], cancellationToken: TestContext.Current.CancellationToken)[0];
        FlightEvent ejection = plan.Flown().Main.The(FlightEventKind.Ejection);
        Assert.Equal(ejection.Before.Velocity.MetersPerSecond, option.Speed.MetersPerSecond, 6);
        Assert.Equal(ejection.Before.Height.Meters, option.Height.Meters, 6);
    }

    [Fact]
    public void Too_long_a_delay_ends_on_the_ground() => Assert.Equal(0, Options.Single(o => o.Delay.Seconds == 40).Height.Meters);

    [Fact]
    public void A_stage_that_never_lights_has_no_delay() => Assert.Empty(
        TwoStages(Gap(_ => GapIgnitionResult.NotLit(null, "cold")))
            .ChooseDelay([Seconds(3)], cancellationToken: TestContext.Current.CancellationToken));

    /// <summary>Pushed too weakly to hold it up, a stage is past its apogee before its motor burns out: no delay from there on can meet it.</summary>
    [Fact]
    public void A_stage_past_apogee_at_burnout_has_no_delay()
    {
        Stage top = Sustainer(Contact()) with { Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) }, ThrustHistory.FromColumns([0, 0.1, 29, 30], [0, 0.1, 0.1, 0])) };
        FlightPlan plan = Plan(Booster(), top);
        FlightRun run = plan.Flown();
        Assert.True(run.Main.ApogeeTime < run.Main.The(FlightEventKind.Ignition, "sustainer").Time + Seconds(30));
        Assert.Empty(plan.ChooseDelay([Seconds(0), Seconds(3)], cancellationToken: TestContext.Current.CancellationToken));
    }
}
