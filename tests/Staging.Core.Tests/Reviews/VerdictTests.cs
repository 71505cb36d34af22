using System.Text.Json;
using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>The first lines of a review: whether each stage lights, how surely, what decides it and what was tried.</summary>
public class VerdictTests
{
    private static readonly StagingReview Demo = DemoPlan.Plan.Review(cases: 20);

    private static readonly GapDesign Closed = TestPlans.Lighting with { Vents = [], Joint = Bench.Joint(10) };

    [Fact]
    public void A_review_counts_the_cases_that_the_odds_count()
    {
        Odds odds = DemoPlan.Plan.Odds(cases: 20);
        Assert.Equal(odds.EveryStageLights, Demo.Odds!.EveryStageLights);
        StageVerdict stage = Assert.Single(Demo.Stages);
        Assert.Equal(odds.EveryStageLights.Hits == 20 ? Verdict.Lights : Verdict.MayLight, stage.Verdict);
        Assert.Contains($"({odds.EveryStageLights.Hits} of 20;", Demo.ToString().Split('\n')[1], StringComparison.Ordinal);
        Assert.False(stage.IsAssumed);
        Assert.Empty(stage.Tried);
    }

    [Fact]
    public void Without_cases_the_nominal_case_decides()
    {
        StagingReview lit = DemoPlan.Plan.Review(cases: 0), cold = TestPlans.Through(Closed).Review(cases: 0);
        Assert.Null(lit.Odds);
        Assert.Equal((Verdict.Lights, Verdict.StaysCold), (lit.Verdict, cold.Verdict));
        Assert.StartsWith("Verdict: LIGHTS. Nominal case only, no odds.", lit.ToString().Split('\n')[1], StringComparison.Ordinal);
        Assert.StartsWith("Verdict: sustainer STAYS COLD.", cold.ToString().Split('\n')[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_of_cases_outside_its_range_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>("cases", () => DemoPlan.Plan.Review(cases: -1));

    [Fact]
    public void Each_change_that_is_suggested_was_run_and_tells_its_result()
    {
        StagingReview review = TestPlans.Through(Closed).Review(cases: 0);
        StageVerdict stage = Assert.Single(review.Stages);
        Assert.Equal(["the vents asked for", "a joint of 20 N instead of 10 N", "a gap of 125 mm instead of 250 mm"],
            stage.Tried.Select(t => t.Change), (part, whole) => whole.StartsWith(part, StringComparison.Ordinal));
        Assert.All(stage.Tried, t =>
        {
            GapRun again = t.Run.Problem.Solve();
            Assert.Equal(again.Outcome.ToString(), t.Run.Outcome.ToString());
            Assert.Equal(again.Outcome.IsLit, t.ToString().Contains(": lights after", StringComparison.Ordinal));
        });
        Assert.Contains(stage.Tried, t => t.Run.Outcome.IsLitBeforeParting);
    }

    [Fact]
    public void A_pocket_without_a_way_out_is_tried_with_holes_in_its_outer_wall()
    {
        Jacket pocket = Jacket.Between("outer tube", Length.FromMillimeters(26), Length.FromMillimeters(29), Length.FromMillimeters(60));
        GapDesign nested = TestPlans.Lighting with
        {
            Jackets = [pocket],
            Vents = [.. TestPlans.Lighting.Vents.Select(v => v with { To = VentTarget.IntoJacket("outer tube") })],
            Joint = Bench.Joint(20),
        };
        StageVerdict stage = Assert.Single(TestPlans.Through(nested).Review(cases: 0).Stages);
        Assert.Equal(Verdict.StaysCold, stage.Verdict);
        TriedChange outer = stage.Tried[0];
        Assert.Equal("the same holes in the outer wall (outer tube)", outer.Change);
        JacketOpening opening = Assert.Single(outer.Run.Problem.Design.Jackets[0].Openings);
        Assert.Equal((nested.Vents[0].Holes, VentTarget.Air), (opening.Holes, opening.To));
        Assert.True(outer.Run.PeakGaugePressure < stage.Tried[^1].Run.PeakGaugePressure);
    }

    private static readonly int[] ManyHoles = [30, 40, 50, 60, 80];

    [Fact]
    public void Holes_over_a_length_that_are_asked_for_are_told_as_several_rings()
    {
        TriedChange asked = ManyHoles.Select(n => new GapIgnition
        {
            Design = Closed,
            Layout = TestPlans.Layout with { HoleCount = n, WallThickness = Length.FromMillimeters(0.1), Drills = DrillSeries.MetricTenths },
            HolePressureCoefficient = 0,
        }).SelectMany(g => TestPlans.Through(g).Review(cases: 0).Stages[0].Tried).First(t => t.Run.Problem.Design.Vents is [{ Spread: > 0 }, ..]);
        Vent vent = asked.Run.Problem.Design.Vents[0];
        Assert.EndsWith(FormattableString.Invariant(
            $"; rings over {1e3 * vent.Spread:F1} mm, their middle {250 - vent.Station.Millimeters:F1} mm below the nozzle plane)"), asked.Change, StringComparison.Ordinal);
    }

    /// <summary>The hole right below the nozzle leads to the air, whichever is listed first: vents of a shorter gap are drilled where that one leads.</summary>
    [Fact]
    public void A_shorter_gap_is_vented_where_the_uppermost_hole_leads()
    {
        Vent upper = TestPlans.Lighting.Vents[0];
        GapDesign twoWays = TestPlans.TwoWalls with
        {
            Vents = [upper with { Station = 0.4 * upper.Station, To = VentTarget.IntoJacket("outer tube") }, upper],
            Joint = Bench.Joint(1),
        };
        TriedChange shorter = Assert.Single(
            Assert.Single(TestPlans.Through(twoWays).Review(cases: 0).Stages).Tried, t => t.Change.StartsWith("a gap of 125 mm", StringComparison.Ordinal));
        Assert.Equal(VentTarget.Air, Assert.Single(shorter.Run.Problem.Design.Vents).To);
    }

    [Fact]
    public void Ignition_by_electronics_or_contact_is_assumed()
    {
        foreach (StageIgnition ignition in new[] { TestFlights.Timer(1.2), TestFlights.Contact(0.03) })
        {
            StagingReview review = TestPlans.Of(TestFlights.TwoStages(ignition)).Review();
            Assert.True(review.EveryStageLights);
            Assert.Null(review.Odds);
            Assert.True(Assert.Single(review.Stages).IsAssumed);
            Assert.StartsWith("Verdict: LIGHTS, by assumption.", review.ToString().Split('\n')[1], StringComparison.Ordinal);
            Assert.Contains("sustainer lights, assumed:", review.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_guard_that_refuses_tells_the_value_and_its_limit()
    {
        var fast = new StageIgnition.ByElectronics
        {
            From = TimerStart.LiftOff,
            Timer = Duration.FromSeconds(0.2),
            IgniterLag = Duration.FromSeconds(0.05),
            Guards = new ElectronicsGuards { MinSpeed = Speed.FromMetersPerSecond(200) },
        };
        StagingReview review = TestPlans.Of(TestFlights.TwoStages(fast)).Review();
        StageVerdict stage = Assert.Single(review.Stages);
        Assert.Equal((Verdict.StaysCold, false), (stage.Verdict, stage.IsAssumed));
        Assert.Contains("the guard requires 200.00 m/s or more", stage.Reason, StringComparison.Ordinal);
        Assert.Contains(stage.Reason[..40], review.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_stage_has_a_line_also_above_one_that_stays_cold()
    {
        FlightPlan three = TestFlights.Plan(
            TestFlights.Booster(),
            TestFlights.Booster("second", new StageIgnition.ByGap { Gap = Ignition(Closed) }),
            TestFlights.Sustainer(new StageIgnition.ByGap { Gap = Ignition(TestPlans.Lighting) }));
        StagingReview review = TestPlans.Of(three).Review(cases: 0);
        Assert.Equal(["second", "sustainer"], review.Stages.Select(s => s.Stage));
        Assert.All(review.Stages, s => Assert.Equal(Verdict.StaysCold, s.Verdict));
        Assert.Contains("its turn does not come", review.Stages[1].Reason, StringComparison.Ordinal);
        Assert.Contains("  sustainer stays cold: its turn", review.ToString(), StringComparison.Ordinal);

        static GapIgnition Ignition(GapDesign design) => new() { Design = design, Layout = TestPlans.Layout, HolePressureCoefficient = 0 };
    }

    [Fact]
    public void The_verdict_is_written_as_JSON()
    {
        JsonElement verdict = JsonDocument.Parse(Demo.ToJson()).RootElement.GetProperty("verdict");
        Assert.Equal(Demo.Odds!.EveryStageLights.Hits, verdict.GetProperty("casesLit").GetInt64());
        JsonElement stage = Assert.Single(verdict.GetProperty("stages").EnumerateArray());
        Assert.Equal((Demo.Stages[0].Stage, false), (stage.GetProperty("stage").GetString(), stage.GetProperty("assumed").GetBoolean()));
        JsonElement cold = JsonDocument.Parse(TestPlans.Through(Closed).Review(cases: 0).ToJson()).RootElement.GetProperty("verdict");
        Assert.Equal("staysCold", cold.GetProperty("answer").GetString());
        Assert.Equal(JsonValueKind.Null, cold.GetProperty("cases").ValueKind);
        Assert.Equal(3, cold.GetProperty("stages")[0].GetProperty("tried").GetArrayLength());
    }

    [Fact]
    public void A_few_cases_that_all_light_show_too_little_to_say_that_it_lights()
    {
        GapDesign sure = TestPlans.Lighting with { Source = StartingGaps.Bore18mm.Design.Source, Joint = Bench.Joint(2000) };
        StagingReview few = TestPlans.Through(sure).Review(cases: 3), many = TestPlans.Through(sure).Review(cases: 60);
        Assert.Equal(3, few.Odds!.EveryStageLights.Hits);
        Assert.Equal((Verdict.MayLight, many.Odds!.EveryStageLights.Hits == 60 ? Verdict.Lights : Verdict.MayLight), (few.Verdict, many.Verdict));
    }

    [Fact]
    public void A_stage_lit_by_electronics_above_a_gap_lights_in_the_nominal_case()
    {
        FlightPlan three = TestFlights.Plan(
            TestFlights.Booster(),
            TestFlights.Booster("second", new StageIgnition.ByGap
            {
                Gap = new GapIgnition { Design = TestPlans.Lighting, Layout = null, HolePressureCoefficient = 0 },
            }),
            TestFlights.Sustainer(TestFlights.Contact()));
        StagingReview review = TestPlans.Of(three).Review(cases: 4);
        Assert.True(review.EveryStageLights);
        Assert.DoesNotContain("nominally it stays cold", review.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_late_ignition_says_how_late()
    {
        StagingReview review = TestPlans.Of(TestFlights.TwoStages()).Review(
            new FlightOptions { LateIgnition = Duration.FromSeconds(0.75) });
        Assert.Contains("if sustainer lights 0.75 s late", review.ToString(), StringComparison.Ordinal);
    }
}
