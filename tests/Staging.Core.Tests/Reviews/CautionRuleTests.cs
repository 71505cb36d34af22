using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>Each caution with a number: just inside its rule it is a reminder, just outside it says so.</summary>
public class CautionRuleTests
{
    private static readonly FlightPlan Two = TestFlights.TwoStages();

    public static TheoryData<string, double, double> Rules => new()
    {
        { "CAU010", 1499, 1501 },  // lift-off mass [g]
        { "CAU011", 124.9, 125.1 }, // propellant [g]
        { "CAU012", 319, 321 },    // total impulse [N s]
        { "CAU013", 121.8, 122.0 }, // site [m] for 5 to 10 N s, outside first
        { "CAU014", 8.9, 9.0 },    // wind [m/s], 20 mph
        { "CAU015", 29.9, 30.1 },  // tilt [deg]
        { "CAU016", 5.01, 4.99 },  // thrust to weight
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rule_turns_at_its_number(string code, double inside, double outside)
    {
        if (code == "CAU013")
            (inside, outside) = (outside, inside);
        Assert.False(Of(code, inside).OutsideRule);
        Assert.True(Of(code, outside).OutsideRule);
    }

    [Fact]
    public void The_guide_has_to_be_left_at_13_metres_a_second()
    {
        Caution slow = GuideExit(0.3, out Speed? at), fast = GuideExit(3, out Speed? after);
        Assert.True(slow.OutsideRule && at!.Value.MetersPerSecond < 13);
        Assert.True(!fast.OutsideRule && after!.Value.MetersPerSecond > 13);
        // Between the two there is a length at which the speed is 13 m/s: the caution turns there.
        double low = 0.3, high = 3;
        for (int i = 0; i < 40; i++)
        {
            double middle = 0.5 * (low + high);
            if (GuideExit(middle, out _).OutsideRule)
                low = middle;
            else
                high = middle;
        }

        GuideExit(high, out Speed? turning);
        Assert.Equal(13, turning!.Value.MetersPerSecond, 1e-6);
    }

    [Theory]
    [InlineData(249, 251)]
    public void A_gap_is_outside_practice_beyond_250_mm(double inside, double outside)
    {
        Assert.False(Gap("CAU022", Long(inside)).OutsideRule);
        Assert.True(Gap("CAU022", Long(outside)).OutsideRule);
    }

    [Fact]
    public void Vents_belong_right_below_the_nozzle()
    {
        Assert.False(Gap("CAU025", TestPlans.Lighting).OutsideRule);
        Assert.True(Gap("CAU025", TestPlans.Lighting with { Vents = [] }).OutsideRule);
        Assert.False(Gap("CAU025", At(17.9)).OutsideRule);
        Assert.True(Gap("CAU025", At(18.1)).OutsideRule);
    }

    [Fact]
    public void A_surface_that_just_lights_is_no_margin()
    {
        // Half of what is defended for the ignition temperature, 650 to 920 K.
        double peak = TestPlans.Through(TestPlans.Lighting).Review(cases: 0).Gaps[0].Run.PeakGrainSurface.Kelvins;
        Assert.False(Gap("CAU023", Igniting(peak - 136)).OutsideRule);
        Assert.True(Gap("CAU023", Igniting(peak - 134)).OutsideRule);
        Assert.True(Gap("CAU023", Igniting(peak + 1)).OutsideRule);
    }

    [Fact]
    public void Energy_counts_as_debris_from_eleven_foot_pounds()
    {
        // 11 ft lbf by the definitions of foot and pound: 0.3048 m x 0.45359237 kg x 9.80665 m/s2.
        const double limit = 11 * 0.3048 * 0.45359237 * 9.80665;
        StagingReview review = TestPlans.Of(Two with { Payload = Mass.FromGrams(300) }).Review(cases: 0);
        foreach ((Caution caution, BodyFlight body) in review.Cautions.Where(c => c.Code == "CAU030").Zip(review.Flight.Bodies))
            Assert.Equal(((FlightOutcome.Landed)body.Outcome).KineticEnergy.Joules >= limit, caution.OutsideRule);
        foreach ((Caution caution, FailureCase failure) in review.Cautions.Where(c => c.Code == "CAU024").Zip(review.Flight.FailureCases))
            Assert.Equal(((FlightOutcome.Landed)failure.HardestLanding!.Outcome).KineticEnergy.Joules >= limit, caution.OutsideRule);
        Assert.Contains(review.Cautions, c => c.Code == "CAU024" && c.OutsideRule);
        Assert.Contains(review.Cautions, c => c.Code == "CAU030" && !c.OutsideRule);
    }

    [Fact]
    public void Electronics_and_gaps_of_another_model_get_their_word()
    {
        Assert.Contains(TestPlans.Of(TestFlights.TwoStages(TestFlights.Timer(0.2))).Review(cases: 0).Cautions, c => c.Code == "CAU027");
        StagingReview foreign = TestPlans.Of(TestFlights.TwoStages(TestFlights.Gap(_ => GapIgnitionResult.Lit(
            ignitionLag: Duration.FromMilliseconds(10), separationLag: Duration.FromMilliseconds(10), "a test says so")))).Review(cases: 0);
        Assert.Contains(foreign.Cautions, c => c.Code == "CAU026");
        Assert.Empty(foreign.Gaps);
    }

    /// <summary>The faster of two pieces has landed at that time, the other is still in the air.</summary>
    [Fact]
    public void A_piece_that_was_not_seen_to_land_leaves_the_failure_unknown()
    {
        FailureCase parted = Assert.Single(TestPlans.Of(Two).Review(cases: 0).Flight.FailureCases, f => f.Kind == FailureKind.UnlitAndParted);
        double[] landings = [.. parted.Bodies.Select(b => b.Landing().Time.Seconds)];
        StagingReview cut = TestPlans.Of(Two).Review(new FlightOptions { LatestTime = Duration.FromSeconds(0.5 * (landings[0] + landings[1])) }, cases: 0);
        FailureCase open = Assert.Single(cut.Flight.FailureCases, f => f.Kind == FailureKind.UnlitAndParted);
        Assert.NotNull(open.HardestLanding);
        BodyFlight aloft = Assert.Single(open.Bodies, b => b.Outcome is FlightOutcome.StillAloft);
        Caution caution = Assert.Single(cut.Cautions, c => c.Code == "CAU024" && c.Text.StartsWith($"If {open.Description}: ", StringComparison.Ordinal));
        Assert.True(caution.OutsideRule);
        Assert.EndsWith($": no landing of {aloft.Name} was found; treat it as unknown.", caution.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Values_next_to_their_limits_are_printed_apart()
    {
        Assert.StartsWith("121.8 m smallest dimension; the site table asks for 121.92 m ", Of("CAU013", 121.8).Text, StringComparison.Ordinal);
        Assert.StartsWith("30.1 degrees from vertical; the code allows 30. ", Of("CAU015", 30.1).Text, StringComparison.Ordinal);
        Assert.StartsWith("8.95 m/s planned; the code allows 8.94 m/s. ", Of("CAU014", 8.95).Text, StringComparison.Ordinal);
        Assert.StartsWith("320.04 N s in all stages; the code allows 320 N s", Of("CAU012", 320.04).Text, StringComparison.Ordinal);
        Assert.StartsWith("1500.3 g; the code allows 1500 g", Of("CAU010", 1500.3).Text, StringComparison.Ordinal);
        Assert.StartsWith("125.1 g in all stages; the code allows 125 g", Of("CAU011", 125.1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Depth_is_counted_in_bores_of_the_tube_at_the_nozzle()
    {
        GapDesign deep = At(20);
        GapDesign wider = deep with
        {
            Tube = deep.Tube with { Steps = [new BoreStep { Station = Length.FromMillimeters(200), Bore = Length.FromMillimeters(24) }] },
        };
        Assert.Contains("the last 1.1 bores below the upper nozzle", Gap("CAU025", deep).Text, StringComparison.Ordinal);
        StagingReview stepped = TestPlans.Through(new GapIgnition { Design = wider, Layout = null, HolePressureCoefficient = 0 }).Review(cases: 0);
        Caution caution = Assert.Single(stepped.Cautions, c => c.Code == "CAU025");
        Assert.Contains("the last 0.8 bores below the upper nozzle", caution.Text, StringComparison.Ordinal);
        Assert.False(caution.OutsideRule);
    }

    private static Caution Of(string code, double value)
    {
        double weight = Two.LiftOffMass.Kilograms * Two.Site.Gravity.AtSeaLevel.MetersPerSecondSquared;
        FlightPlan plan = code switch
        {
            "CAU010" => Two with { Payload = Mass.FromGrams(value) - Two.LiftOffMass },
            "CAU011" => Motors(m => m with { PropellantMass = Mass.FromGrams(value / 2), LoadedMass = Mass.FromGrams(value / 2 + 20) }),
            "CAU012" => Motors(m => m with { Thrust = Scaled(value / 2 / TestFlights.Curve.TotalImpulse.NewtonSeconds) }),
            "CAU013" => TestFlights.Plan(TestFlights.Sustainer(new StageIgnition.AtLaunch())),
            "CAU014" => Two with { Site = Two.Site with { Wind = Speed.FromMetersPerSecond(value) } },
            "CAU015" => Two with { Guide = Two.Guide with { Elevation = Angle.FromDegrees(90 - value) } },
            _ => Motors(m => m with { Thrust = Scaled(value * weight / TestFlights.Curve.AverageThrust.Newtons) }),
        };
        StagingPlan review = TestPlans.Of(plan) with { SiteSize = Length.FromMeters(code == "CAU013" ? value : 300) };
        return Assert.Single(review.Review(cases: 0).Cautions, c => c.Code == code);
    }

    private static FlightPlan Motors(Func<Motor, Motor> change) =>
        Two with { Stages = [.. Two.Stages.Select(s => s with { Motor = change(s.Motor) })] };

    private static ThrustHistory Scaled(double factor) =>
        ThrustHistory.FromColumns([0, 0.05, 0.15, 0.25, 0.8, 0.85], [0, 6 * factor, 20 * factor, 9 * factor, 8 * factor, 0]);

    private static Caution GuideExit(double length, out Speed? exit)
    {
        StagingReview review = TestPlans.Of(Two with { Guide = LaunchGuide.Vertical(Length.FromMeters(length)) }).Review(cases: 0);
        exit = review.Flight.GuideExitSpeed;
        return Assert.Single(review.Cautions, c => c.Code == "CAU017");
    }

    private static Caution Gap(string code, GapDesign design) => Assert.Single(TestPlans.Through(design).Review(cases: 0).Cautions, c => c.Code == code);

    private static GapDesign Long(double length) => TestPlans.Lighting with { Tube = Bench.Tube(length), Vents = [Bench.Hole(Bench.Tube(length), 5, 4)] };

    private static GapDesign At(double below_mm) => TestPlans.Lighting with
    {
        Vents = [TestPlans.Lighting.Vents[0] with { Station = TestPlans.Lighting.Tube.Length - Length.FromMillimeters(below_mm) }],
    };

    private static GapDesign Igniting(double temperature) =>
        TestPlans.Lighting with { Grain = TestPlans.Lighting.Grain with { IgnitionTemperature = Temperature.FromKelvins(temperature) } };
}
