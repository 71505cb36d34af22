using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class FailureCaseTests
{
    private static readonly FlightRun Run = TwoStages().Flown();

    [Fact]
    public void Every_failure_has_its_flight() => Assert.Equal(
        [FailureKind.UnlitAndJoined, FailureKind.UnlitAndParted, FailureKind.LitLate, FailureKind.EjectionFailure], Run.FailureCases.Select(b => b.Kind));

    [Fact]
    public void A_late_stage_parts_in_time_and_lights_later()
    {
        BodyFlight late = Run.FailureCases[2].Bodies[0];
        Assert.Equal(0.87, late.The(FlightEventKind.Separation).Time.Seconds);
        Assert.Equal(1.87, late.The(FlightEventKind.Ignition).Time.Seconds, 12);
        Assert.NotEqual(Run.Apogee, late.Apogee);
        Assert.Equal("sustainer lights 1 s late", Run.FailureCases[2].Description);
    }

    [Fact]
    public void Lit_after_apogee_it_drives_itself_down()
    {
        BodyFlight late = TwoStages().Flown(new FlightOptions { LateIgnition = Seconds(6) }).FailureCases[2].Bodies[0];
        Assert.True(late.The(FlightEventKind.Ignition).Time > late.ApogeeTime);
        double unlit = Run.FailureCases[1].Bodies[0].Landing().Speed.MetersPerSecond;
        Assert.True(late.Landing().Speed.MetersPerSecond > unlit);
    }

    [Fact]
    public void Nothing_ejected_falls_hard()
    {
        FailureCase stuck = Run.FailureCases[3];
        BodyFlight body = Assert.Single(stuck.Bodies);
        Assert.Contains(body.Events, e => e.Kind == FlightEventKind.Ejection);
        Assert.Null(body.Find(FlightEventKind.DeviceOpens));
        Assert.True(body.Landing().Speed.MetersPerSecond > 5 * Run.Main.Landing().Speed.MetersPerSecond);
    }

    [Fact]
    public void Without_a_late_ignition_that_case_is_left_out() => Assert.DoesNotContain(
        TwoStages().Flown(new FlightOptions { LateIgnition = null }).FailureCases, b => b.Kind == FailureKind.LitLate);

    [Fact]
    public void The_opening_load_follows_from_the_speed_at_opening()
    {
        FlightState opens = Run.Main.The(FlightEventKind.DeviceOpens).Before;
        double rho = StandardAtmosphere.Us1976.At(200 + opens.Height.Meters).Density_kg_per_m3;
        double v = opens.Velocity.MetersPerSecond;
        Assert.Equal(1.8 * 0.5 * rho * v * v * 0.06, Run.Main.OpeningLoadEstimate(1.8)!.Value.Newtons, 9);
        Assert.Null(Run.FailureCases[3].Bodies[0].OpeningLoadEstimate(1.8));
    }

    [Fact]
    public void A_booster_that_tumbles_has_no_lines_to_load()
    {
        BodyFlight booster = Run.Bodies[1];
        Assert.Equal("booster", booster.The(FlightEventKind.DeviceOpens).Stage);
        Assert.Null(booster.OpeningLoadEstimate(1.8));
    }

    [Fact]
    public void Waiting_bends_the_path()
    {
        Duration? strict = Run.LatestIgnition("sustainer", Angle.FromDegrees(5), Angle.FromDegrees(12));
        Duration? wide = Run.LatestIgnition("sustainer", Angle.FromDegrees(5), Angle.FromDegrees(30));
        Assert.NotNull(strict);
        Assert.InRange(wide!.Value.Seconds, strict.Value.Seconds + 0.1, 6);
        Assert.Null(Run.LatestIgnition("sustainer", Angle.FromDegrees(5), Angle.FromDegrees(5.01)));
        Assert.Throws<ArgumentException>(() => Run.LatestIgnition("booster", Angle.FromDegrees(5), Angle.FromDegrees(20)));
    }
}
