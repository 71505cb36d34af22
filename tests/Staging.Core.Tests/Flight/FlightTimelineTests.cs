using Staging.Core.Flight;
using Staging.Core.Gases;
using UnitsNet;
using static Staging.Core.Tests.Flight.TestFlights;

namespace Staging.Core.Tests.Flight;

public class FlightTimelineTests
{
    private static readonly FlightRun Run = TwoStages().Flown();

    [Fact]
    public void The_timeline_of_a_nominal_flight_is_complete_and_in_order()
    {
        Assert.Equal(
            [
                FlightEventKind.Ignition, FlightEventKind.LiftOff, FlightEventKind.GuideExit, FlightEventKind.Burnout, FlightEventKind.BurnThrough,
                FlightEventKind.Separation, FlightEventKind.Ignition, FlightEventKind.MaximumSpeed, FlightEventKind.Burnout,
                FlightEventKind.Ejection, FlightEventKind.DeviceOpens, FlightEventKind.Apogee, FlightEventKind.Landing,
            ],
            Run.Main.Events.Select(e => e.Kind));
        Assert.Equal(Run.Main.Events.Select(e => e.Time.Seconds).Order(), Run.Main.Events.Select(e => e.Time.Seconds));
    }

    [Fact]
    public void Known_times_are_met_exactly()
    {
        Assert.Equal(0.85, Run.Main.The(FlightEventKind.Burnout, "booster").Time.Seconds);
        Assert.Equal(0.85 + 0.02, Run.Main.The(FlightEventKind.Separation).Time.Seconds);
        Assert.Equal(0.85 + 0.02 + 0.85 + 4, Run.Main.The(FlightEventKind.Ejection).Time.Seconds);
    }

    /// <summary>Thrust that ends in a jump: the stack is fastest at the last moment of the push, and is seen before the jump.</summary>
    [Fact]
    public void The_greatest_speed_is_reached_under_thrust()
    {
        Stage stage = Sustainer(new StageIgnition.AtLaunch()) with
        {
            Motor = Motor(new MotorForwardEnd.Ejects { Delay = Seconds(4) }, ThrustHistory.FromColumns([0, 0.5], [10, 10])),
        };
        FlightEvent fastest = Plan(stage).Flown().Main.The(FlightEventKind.MaximumSpeed);
        Assert.Equal(0.5, fastest.Time.Seconds);
        Assert.Equal(10, fastest.Before.Thrust.Newtons, 9);
    }

    [Fact]
    public void Both_sides_of_a_jump_are_kept()
    {
        FlightEvent separation = Run.Main.The(FlightEventKind.Separation);
        double left = Booster().BurntMass.Kilograms;
        Assert.Equal(left, separation.Before.Mass.Kilograms - separation.After.Mass.Kilograms, 12);
        Assert.Equal(separation.Before.Mass.Kilograms, Run.Main.JustBefore(separation.Time).Mass.Kilograms, 12);
        Assert.Equal(separation.After.Mass.Kilograms, Run.Main.At(separation.Time).Mass.Kilograms, 12);
    }

    [Fact]
    public void Columns_hold_two_rows_at_a_jump_and_no_row_twice()
    {
        using var csv = new StringWriter();
        Run.Main.Sample(Seconds(0.01)).WriteCsv(csv);
        string[] lines = csv.ToString().Split('\n');
        Assert.Equal("time [s],height [m],velocity [m/s],acceleration [m/s2],mass [kg],thrust [N],drag [N],mach number [-],dynamic pressure [Pa]", lines[0]);
        Assert.Equal(Run.Main.Sample(Seconds(0.01)).Time_s.Length + 2, lines.Length);
        FlightColumns columns = Run.Main.Sample(Seconds(0.01));
        double[] t = columns.Time_s.ToArray(), m = columns[FlightChannel.Mass].ToArray(), a = columns[FlightChannel.Acceleration].ToArray();
        for (int i = 1; i < t.Length; i++)
            Assert.True(t[i] > t[i - 1] || (t[i] == t[i - 1] && (m[i] != m[i - 1] || a[i] != a[i - 1])), $"Row {i} at {t[i]:R} s repeats the one before.");
        // Between the rows that were asked for stand the two sides of a jump, and nothing else.
        for (int i = 1; i < t.Length - 1; i++)
            Assert.True(Math.Abs(t[i] / 0.01 - Math.Round(t[i] / 0.01)) < 1e-6 || t[i] == t[i - 1] || t[i] == t[i + 1], $"Row {i} at {t[i]:R} s stands alone.");
        Assert.Equal(2, t.Count(x => x == 0.85 + 0.02));
        Assert.Equal(Run.Main.Landing().Time.Seconds, t[^1]);
        Assert.Equal(0, columns[FlightChannel.Height].Span[^1], 6);
        Assert.Equal(t.Length, columns[FlightChannel.DynamicPressure].Length);
    }

    /// <summary>On the coast each row is that of the air there: Mach number and dynamic pressure by their definitions, drag by the table, and what drag and weight do.</summary>
    [Fact]
    public void Columns_of_the_coast_follow_from_height_and_velocity()
    {
        FlightColumns columns = Run.Main.Sample(Seconds(0.1));
        double from = Run.Main.The(FlightEventKind.Burnout, "sustainer").Time.Seconds, to = Run.Main.The(FlightEventKind.Ejection).Time.Seconds;
        int[] coast = [.. Enumerable.Range(0, columns.Time_s.Length).Where(i => columns.Time_s.Span[i] > from && columns.Time_s.Span[i] < to)];
        Assert.True(coast.Length > 20);
        foreach (int i in coast)
        {
            double At(FlightChannel channel) => columns[channel].Span[i];
            double h = At(FlightChannel.Height), v = At(FlightChannel.Velocity), m = At(FlightChannel.Mass);
            AirSample air = StandardAtmosphere.Us1976.At(200 + h);
            double mach = v / air.SoundSpeed_m_per_s, q = 0.5 * air.Density_kg_per_m3 * v * v, drag = q * 4.9e-4 * Drag.At(mach);
            Assert.Equal(mach, At(FlightChannel.MachNumber), 1e-9);
            Assert.Equal(q, At(FlightChannel.DynamicPressure), 1e-9 * q);
            Assert.Equal(drag, At(FlightChannel.Drag), 1e-9 * drag);
            double g = Run.Plan.Site.Gravity.At(Length.FromMeters(200 + h)).MetersPerSecondSquared;
            Assert.Equal(-drag / m - g, At(FlightChannel.Acceleration), 1e-8);
        }
    }

    [Fact]
    public void Every_body_is_followed_to_the_ground()
    {
        Assert.Equal(["sustainer", "booster"], Run.Bodies.Select(b => b.Name));
        Assert.All(Run.Bodies, b => Assert.True(b.Landing().Speed.MetersPerSecond > 0));
        BodyFlight booster = Run.Bodies[1];
        Assert.Equal(FlightEventKind.Separation, booster.Events[0].Kind);
        double terminal = Math.Sqrt(2 * Booster().BurntMass.Kilograms * 9.8 / (1.20 * 0.003));
        Assert.Equal(terminal, booster.Landing().Speed.MetersPerSecond, 0.02 * terminal);
    }

    [Fact]
    public void Mass_is_accounted_for_to_round_off() => Assert.True(Math.Abs(Run.MassResidual()) < 1e-14);

    [Fact]
    public void Energy_is_accounted_for_to_the_tolerance_of_the_integration()
    {
        FlightPlan leaning = TwoStages() with
        {
            Guide = new LaunchGuide
            {
                Length = Length.FromMeters(1),
                Elevation = Angle.FromDegrees(80),
                FrictionCoefficient = 0.3,
                ConstantFriction = Force.FromNewtons(0.2),
            },
        };
        EnergyLedger ledger = leaning.Flown().Main.EnergyLedger();
        Assert.True(Math.Abs(ledger.Residual) < 1e-7, $"Residual {ledger.Residual:G3}.");
        Assert.True(ledger.Friction.Joules > 0.2 && ledger.Friction.Joules < 0.6);
    }

    [Fact]
    public void Drift_is_wind_times_the_time_from_apogee()
    {
        double aloft = Run.Main.Landing().Time.Seconds - Run.Main.ApogeeTime!.Value.Seconds;
        Assert.Equal(4 * aloft, Run.Main.DriftEstimate!.Value.Meters, 9);
        Assert.Equal(0, Run.Main.ApogeeRange!.Value.Meters);
    }

    [Fact]
    public void Without_tracks_the_numbers_are_the_same_and_the_course_is_refused()
    {
        FlightRun lean = TwoStages().Flown(new FlightOptions { KeepTracks = false, Scope = FlightScope.UppermostStage });
        Assert.Equal(Run.Apogee, lean.Apogee);
        Assert.Equal((Run.Main.Landing().Time, Run.Main.Landing().Speed), (lean.Main.Landing().Time, lean.Main.Landing().Speed));
        Assert.Empty(lean.FailureCases);
        Assert.Single(lean.Bodies);
        Assert.Throws<InvalidOperationException>(() => lean.Main.At(Seconds(1)));
        Assert.Throws<InvalidOperationException>(() => lean.MassResidual());
    }
}
