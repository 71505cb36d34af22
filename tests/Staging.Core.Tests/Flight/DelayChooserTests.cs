using Staging.Core.Flight;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class DelayChooserTests
{
    private static readonly DelayChoice Choice =
        TwoStages().ChooseDelay([Seconds(0), Seconds(3), Seconds(5), Seconds(7), Seconds(40)], cancellationToken: TestContext.Current.CancellationToken)!;

    [Fact]
    public void The_best_delay_is_the_one_nearest_apogee_in_speed()
    {
        Assert.NotNull(Choice.Best);
        Assert.Equal(Choice.Candidates.Min(o => o.Speed.MetersPerSecond), Choice.Best.Speed.MetersPerSecond);
        FlightRun run = TwoStages().Flown();
        double free = run.FailureCases.Single(b => b.Kind == FailureKind.EjectionFailure).Bodies[0].ApogeeTime!.Value.Seconds;
        Assert.Equal(free - run.Main.The(FlightEventKind.Burnout, "sustainer").Time.Seconds, Choice.Ideal.Seconds, 6);
    }

    [Fact]
    public void An_option_agrees_with_the_flight_that_uses_it()
    {
        DelayOption option = Choice.Candidates[1];
        Stage top = Sustainer(Contact()) with { Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(3) }) };
        FlightEvent ejection = Plan(Booster(), top).Flown().Main.The(FlightEventKind.Ejection);
        Assert.Equal(ejection.Before.Velocity.MetersPerSecond, option.Speed.MetersPerSecond, 6);
        Assert.Equal(ejection.Before.Height.Meters, option.Height.Meters, 6);
        Assert.Equal(3 - Choice.Ideal.Seconds, option.AfterApogee.Seconds, 9);
        Assert.True(option.EarlyOrLateSpeed > option.Speed);
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
        DelayOption option = plan.ChooseDelay([Seconds(4)], cancellationToken: TestContext.Current.CancellationToken)!.Candidates[0];
        FlightEvent ejection = plan.Flown().Main.The(FlightEventKind.Ejection);
        Assert.Equal(ejection.Before.Velocity.MetersPerSecond, option.Speed.MetersPerSecond, 6);
        Assert.Equal(ejection.Before.Height.Meters, option.Height.Meters, 6);
    }

    [Fact]
    public void Too_long_a_delay_ends_on_the_ground() => Assert.Equal(0, Choice.Candidates[4].Height.Meters);

    [Fact]
    public void A_stage_that_never_lights_has_no_delay() => Assert.Null(
        TwoStages(Gap(_ => new GapIgnitionResult.NotLit { SeparationLag = null, Reason = "cold" }))
            .ChooseDelay([Seconds(3)], cancellationToken: TestContext.Current.CancellationToken));
}
