using System.Globalization;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>The review joins flight and gap both ways.</summary>
public class StagingReviewTests
{
    private static readonly StagingReview Lit = TestPlans.Through(TestPlans.Lighting).Review(cases: 0);

    [Fact]
    public void The_gap_is_run_at_the_pressure_and_masses_of_the_flight()
    {
        GapReview gap = Assert.Single(Lit.Gaps);
        BurnThroughState state = gap.Staging.State;
        Assert.Equal(state.AirPressure.Pascals, gap.Run.Problem.Surroundings.Pressure.Pascals, 1e-9);
        Assert.Equal(state.MassAhead.Kilograms, gap.Run.Problem.Bodies.MassAhead.Kilograms, 1e-12);
        Assert.True(state.Height.Meters > 5 && state.AirPressure.Kilopascals < 99, "burn-through is up in thinner air");
    }

    /// <summary>The review shows the run by which the flight decided, and that is what a fresh solve gives, to the bit.</summary>
    [Fact]
    public void The_gap_is_solved_once_for_flight_and_review()
    {
        GapReview gap = Assert.Single(Lit.Gaps);
        Assert.Same(Assert.Single(Lit.Flight.Stagings).Details, gap.Run);
        Assert.Same(gap.Run, Lit.Flight.GapRunBelow());
        GapRun fresh = gap.Run.Problem.Solve(gap.Run.Model, gap.Run.Options);
        Assert.Equal(fresh.Statistics.Work, gap.Run.Statistics.Work);
        Assert.Equal(fresh.Outcome.Time, gap.Run.Outcome.Time);
        Assert.Equal((fresh.PeakGaugePressure, fresh.PeakGrainSurface, fresh.End), (gap.Run.PeakGaugePressure, gap.Run.PeakGrainSurface, gap.Run.End));
        Assert.Equal(fresh.Events.Select(e => (e.Kind, e.Time)), gap.Run.Events.Select(e => (e.Kind, e.Time)));
    }

    [Fact]
    public void The_upper_motor_lights_when_the_gap_says_so()
    {
        GapReview gap = Assert.Single(Lit.Gaps);
        FlightEvent burnThrough = Lit.Flight.Main.The(FlightEventKind.BurnThrough);
        FlightEvent ignition = Lit.Flight.Main.The(FlightEventKind.Ignition, "sustainer");
        Assert.True(Lit.EveryStageLights);
        Assert.Equal(gap.Run.TimeOf(GapEventKind.Lit)!.Value.Seconds, ignition.Time.Seconds - burnThrough.Time.Seconds, 1e-9);
    }

    [Fact]
    public void A_gap_that_is_pushed_apart_leaves_the_stage_cold_and_parted()
    {
        StagingReview review = TestPlans.Through(TestPlans.Lighting with { Vents = [], Joint = Bench.Joint(10) }).Review(cases: 0);
        Assert.False(review.EveryStageLights);
        Assert.IsType<GapOutcome.PushedApart>(Assert.Single(review.Gaps).Run.Outcome);
        Assert.Null(review.Flight.Main.Find(FlightEventKind.Ignition, "sustainer"));
        Assert.NotNull(review.Flight.Main.Find(FlightEventKind.Separation));
        Assert.Contains(review.Cautions, c => c.Code == "CAU023" && c.OutsideRule);
    }

    /// <summary>From the height and speed at burn-through alone, by the standard atmosphere: p + C_p rho v^2/2.</summary>
    [Fact]
    public void Pressure_at_the_holes_follows_the_speed()
    {
        GapReview gap = Assert.Single(TestPlans.Through(TestPlans.Lighting, coefficient: -0.5).Review(cases: 0).Gaps);
        FlightState state = Lit.Flight.Main.The(FlightEventKind.BurnThrough).Before;
        AirSample air = StandardAtmosphere.Us1976.At(200 + state.Height.Meters);
        double dynamic = 0.5 * air.Density_kg_per_m3 * Math.Pow(state.Velocity.MetersPerSecond, 2);
        // Seven digits: the flight takes its air from polynomials good to 1e-11, and 1e-6 Pa is round-off of what is left.
        Assert.Equal(air.Pressure_Pa - 0.5 * dynamic, gap.Run.Problem.Surroundings.Pressure.Pascals, 1e-2);
    }

    /// <summary>From the plan's masses and drag table: the upper stage alone pushes back, the booster carries the rest of the drag of the stack and has no thrust left.</summary>
    [Fact]
    public void The_bodies_are_pressed_together_by_drag_ahead()
    {
        GapReview gap = Assert.Single(Lit.Gaps);
        FlightState state = Lit.Flight.Main.The(FlightEventKind.BurnThrough).Before;
        AirSample air = StandardAtmosphere.Us1976.At(200 + state.Height.Meters);
        double speed = state.Velocity.MetersPerSecond, mach = speed / air.SoundSpeed_m_per_s;
        double drag = 0.5 * air.Density_kg_per_m3 * speed * speed * 4.9e-4 * TestFlights.Drag.At(mach);
        const double Ahead = 0.040 + 0.021;
        Assert.Equal(drag / Ahead, gap.Run.Problem.Bodies.ClosingAcceleration.MetersPerSecondSquared, 1e-6 * drag / Ahead);
    }

    [Fact]
    public void Every_body_and_every_failure_has_a_caution_with_its_energy()
    {
        Assert.All(Lit.Flight.Bodies, body => Assert.Contains(Lit.Cautions, c => c.Code == "CAU030" && Tells(c, body, "F2")));
        Assert.All(Lit.Flight.FailureCases, failure => Assert.Contains(Lit.Cautions, c => c.Code == "CAU024" && Tells(c, failure.HardestLanding!, "F1")));
        Assert.All(Lit.Cautions, c => Assert.False(string.IsNullOrWhiteSpace(c.Rule.Source)));

        // Mass and speed at the ground by the body's own course.
        static bool Tells(Caution caution, BodyFlight body, string format)
        {
            FlightState end = body.The(FlightEventKind.Landing).Before;
            double energy = 0.5 * end.Mass.Kilograms * Math.Pow(end.Velocity.MetersPerSecond, 2);
            return caution.Text.Contains(body.Name, StringComparison.Ordinal)
                && caution.Text.Contains(energy.ToString(format, CultureInfo.InvariantCulture) + " J", StringComparison.Ordinal);
        }
    }

    [Fact]
    public void No_caution_permits_anything() =>
        Assert.All(Lit.Cautions, c => Assert.DoesNotContain("safe", c.Text.Replace("safety officer", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Limits_of_the_code_are_noticed()
    {
        FlightPlan leaning = TestFlights.TwoStages() with
        {
            Payload = Mass.FromKilograms(2),
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(55) },
            Site = TestFlights.TwoStages().Site with { Wind = Speed.FromMetersPerSecond(12) },
        };
        StagingReview review = (TestPlans.Of(leaning) with { SiteSize = Length.FromMeters(50) }).Review(cases: 0);
        string[] outside = [.. review.Cautions.Where(c => c.OutsideRule).Select(c => c.Code).Distinct()];
        Assert.Superset(new HashSet<string> { "CAU010", "CAU013", "CAU014", "CAU015", "CAU016", "CAU017" }, outside.ToHashSet());
    }

    [Fact]
    public void Drift_is_held_against_half_the_site()
    {
        FlightPlan windy = TestFlights.TwoStages() with { Site = TestFlights.TwoStages().Site with { Wind = Speed.FromMetersPerSecond(8) } };
        StagingReview review = TestPlans.Of(windy).Review(cases: 0);
        double drift = review.Flight.Main.DriftEstimate!.Value.Meters;
        foreach ((double size, bool outside) in (ReadOnlySpan<(double, bool)>)[(2 * drift + 10, false), (2 * drift - 10, true)])
        {
            Caution caution = (TestPlans.Of(windy) with { SiteSize = Length.FromMeters(size) }).Review(cases: 0).Cautions.Single(c => c.Code == "CAU031");
            Assert.Equal(outside, caution.OutsideRule);
            Assert.Contains(drift.ToString("F0", System.Globalization.CultureInfo.InvariantCulture) + " m off", caution.Text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_leaning_guide_adds_its_distance_to_the_drift()
    {
        FlightPlan leaning = TestFlights.TwoStages() with
        {
            Guide = LaunchGuide.Vertical(Length.FromMeters(1)) with { Elevation = Angle.FromDegrees(65) },
            Site = TestFlights.TwoStages().Site with { Wind = Speed.FromMetersPerSecond(0) },
        };
        StagingReview review = (TestPlans.Of(leaning) with { SiteSize = Length.FromMeters(100) }).Review(cases: 0);
        Assert.True(review.Cautions.Single(c => c.Code == "CAU031").OutsideRule);
        Assert.True(review.Flight.Main.ApogeeRange!.Value.Meters > 50);
    }

    [Fact]
    public void A_slow_staging_is_noticed()
    {
        Caution fast = TestPlans.Of(TestFlights.TwoStages()).Review(cases: 0).Cautions.Single(c => c.Code == "CAU028");
        Caution slow = TestPlans.Of(TestFlights.TwoStages(TestFlights.Timer(4.5))).Review(cases: 0).Cautions.Single(c => c.Code == "CAU028");
        Assert.False(fast.OutsideRule);
        Assert.True(slow.OutsideRule, slow.Text);
    }

    [Theory]
    [InlineData(1, 0.010, false)]
    [InlineData(20, 0.010, true)]
    [InlineData(1, 0.070, true)]
    public void A_high_power_motor_is_noticed_among_all_motors(double thrust, double propellant, bool outside)
    {
        Motor motor = TestFlights.Motor(new MotorForwardEnd.Plugged(), TestFlights.Curve.Scaled(thrust), propellant);
        FlightPlan plan = TestFlights.Plan(TestFlights.Booster() with { ParallelMotors = [new MotorGroup { Motor = motor, Count = 1 }] }, TestFlights.Sustainer(TestFlights.Contact()));
        StagingReview review = TestPlans.Of(plan).Review(cases: 0);
        Assert.Equal(outside, review.Cautions.Any(c => c.Code == "CAU018" && c.OutsideRule));
        Assert.DoesNotContain(review.Cautions, c => c.Code == "CAU019");
    }

    [Fact]
    public void Above_the_first_federal_class_the_class_is_named()
    {
        StagingReview review = TestPlans.Of(TestFlights.TwoStages() with { Payload = Mass.FromKilograms(2) }).Review(cases: 0);
        Caution caution = review.Cautions.Single(c => c.Code == "CAU019");
        Assert.True(caution.OutsideRule);
        Assert.Contains("class 2", caution.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Motors_in_contact_get_the_word_about_tape() =>
        Assert.Contains(TestPlans.Of(TestFlights.TwoStages()).Review(cases: 0).Cautions, c => c.Code == "CAU021" && c.Text.Contains("plastic film", StringComparison.Ordinal));

    [Fact]
    public void Findings_of_a_gap_carry_the_path_through_the_plan()
    {
        StagingPlan plan = TestPlans.Through(TestPlans.Lighting with { Tube = Bench.Tube(100) });
        ModelFinding finding = Assert.Single(plan.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal("Flight.Stages[1].Ignition.Gap.Design.Vents[0].Station", finding.Path);
        Assert.Throws<InvalidModelException>(() => plan.Review(cases: 0));
    }

    [Fact]
    public void A_long_source_is_watched_to_its_end()
    {
        GapDesign slow = TestPlans.Lighting with { Source = TestPlans.Lighting.Motor() with { Web = TestPlans.Lighting.Web() with { Time = Duration.FromSeconds(0.4) } } };
        GapReview gap = Assert.Single(TestPlans.Through(slow).Review(cases: 0).Gaps);
        Assert.Equal(0.8, gap.Run.Problem.Horizon.Seconds, 1e-9);
        Assert.Contains((gap.Run.Problem with { Horizon = Duration.FromSeconds(0.3) }).Check(), f => f.Code == "GAP011");
        Assert.DoesNotContain(gap.Run.Problem.Check(), f => f.Code == "GAP011");
    }

    /// <summary>No outlet sees less than next to nothing in fast flight, whatever its coefficient says: the flight goes on.</summary>
    [Theory]
    [InlineData(-1.5, 300)]
    [InlineData(-1, 400)]
    public void An_outlet_in_fast_flight_keeps_some_pressure_behind_it(double coefficient, double speed)
    {
        GapDesign sucking = TestPlans.Lighting with { Vents = [TestPlans.Lighting.Vents[0] with { To = VentTarget.Outside(coefficient) }] };
        var gap = new GapIgnition { Design = sucking, Layout = TestPlans.Layout, HolePressureCoefficient = -0.5 };
        BurnThroughState fast = Assert.Single(Lit.Gaps).Staging.State with { Speed = Speed.FromMetersPerSecond(speed) };
        GapProblem problem = gap.ProblemAt(fast);
        Assert.DoesNotContain(problem.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(100, problem.Surroundings.Pressure.Pascals + coefficient * problem.DynamicPressure.Pascals, 1e-6);
        Assert.NotEmpty(gap.Ignite(fast, TestContext.Current.CancellationToken).Reason);
    }

    [Fact]
    public void A_gap_run_inside_a_flight_stops_with_the_flight()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var gap = new GapIgnition { Design = TestPlans.Lighting, Layout = TestPlans.Layout, HolePressureCoefficient = 0 };
        Assert.Throws<OperationCanceledException>(() => gap.Ignite(Assert.Single(Lit.Gaps).Staging.State, source.Token));
    }

    [Fact]
    public void The_model_of_the_gap_is_that_of_its_ignition_in_flight_in_the_run()
    {
        BurnThroughState state = Assert.Single(Lit.Gaps).Staging.State;
        var gap = new GapIgnition
        {
            Design = TestPlans.Lighting with { Grain = TestPlans.Lighting.Grain with { IgnitionTemperature = Temperature.FromKelvins(730) } },
            Layout = TestPlans.Layout,
            HolePressureCoefficient = 0,
        };
        var stirred = new GapModel.WellStirred();
        var resolved = new GapModel.OneDimensional { Cells = 40 };
        foreach (GapModel model in (GapModel[])[new GapModel.TwoZone(), stirred, resolved])
        {
            GapIgnition with = gap with { Model = model };
            Duration? lag = with.Ignite(state, TestContext.Current.CancellationToken).IgnitionLag;
            Assert.Equal(with.ProblemAt(state).Solve(model).TimeOf(GapEventKind.Lit)!.Value, lag);
        }

        GapReview reviewed = Assert.Single(TestPlans.Through(gap with { Model = stirred }).Review(cases: 0).Gaps);
        Assert.Same(stirred, reviewed.Run.Model);
        Assert.NotEqual(Assert.Single(Lit.Gaps).Run.PeakGrainSurface, reviewed.Run.PeakGrainSurface);
        Assert.NotEqual(Assert.Single(Lit.Gaps).Advice, reviewed.Advice);
    }

    [Fact]
    public void Holes_in_fast_flight_see_no_less_than_a_vacuum()
    {
        GapReview gap = Assert.Single(Lit.Gaps);
        var ignition = new GapIgnition { Design = TestPlans.Lighting, Layout = TestPlans.Layout, HolePressureCoefficient = -1.5 };
        GapProblem problem = ignition.ProblemAt(gap.Staging.State with { Speed = Speed.FromMetersPerSecond(400) });
        Assert.Equal(100, problem.Surroundings.Pressure.Pascals, 1e-9);
    }

    [Fact]
    public void A_review_is_a_pure_function()
    {
        StagingReview again = TestPlans.Through(TestPlans.Lighting).Review(cases: 0);
        Assert.Equal(Lit.Flight.Apogee!.Value.Meters, again.Flight.Apogee!.Value.Meters);
        Assert.Equal(Lit.Cautions.Select(c => c.Text), again.Cautions.Select(c => c.Text));
    }
}
