using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>From a plan to its gap as the flight meets it, and to the windows of that gap.</summary>
public class PlanGapsTests
{
    private static readonly StagingPlan Demo = DemoPlan.Plan;

    private static readonly GapDesign Dark = TestPlans.Lighting with { Vents = [], Joint = Bench.Joint(10) };

    [Fact]
    public void The_gap_of_a_plan_is_the_one_that_its_review_runs()
    {
        GapProblem reviewed = Assert.Single(Demo.Review(cases: 0).Gaps).Run.Problem;
        Assert.Equal(reviewed, Demo.GapBelow());
        Assert.Equal(reviewed, Demo.Flight.Fly().GapRunBelow("sustainer").Problem);
        GapQuestion question = Demo.QuestionBelow("sustainer");
        Assert.Equal(reviewed, question.Problem);
        // What the flight imposes: not the still air at the ground.
        Assert.True(reviewed.Surroundings.Pressure < Pressure.FromPascals(Demo.Flight.Site.Atmosphere.At(Demo.Flight.Site.Elevation.Meters).Pressure_Pa));
        Assert.True(question.Problem.DynamicPressure.Pascals > 100 && question.Problem.Bodies.ClosingAcceleration.MetersPerSecondSquared != 0);
    }

    [Fact]
    public void A_question_takes_layout_model_and_solver_of_the_plan()
    {
        var gap = new GapIgnition
        {
            Design = TestPlans.Lighting,
            Layout = TestPlans.Layout,
            HolePressureCoefficient = -0.2,
            Model = new GapModel.WellStirred(),
            Solver = new() { RelativeTolerance = 1e-5 },
        };
        GapQuestion question = TestPlans.Through(gap).QuestionBelow();
        Assert.Equal((gap.Layout, gap.Model, gap.Solver), (question.Layout, question.Model, question.Solver));
        Assert.Null(question.Asked);
    }

    [Fact]
    public void The_vent_window_of_the_demo_turns_at_its_edge_in_flight()
    {
        GapQuestion question = Demo.QuestionBelow();
        Length gap = question.Problem.Design.Tube.Length;
        Window window = question.VentWindow(gap, Axis.Factors("vent area", "mm2", 10, 400, 6)).Widest!;
        Assert.False(window.LowIsEndOfSearch);
        Assert.True(WithVents(window.Low).Review(cases: 0).EveryStageLights);
        Assert.False(WithVents(window.Low / 1.03).Review(cases: 0).EveryStageLights);

        StagingPlan WithVents(double mm2)
        {
            Stage upper = Demo.Flight.Stages[1];
            GapIgnition ignition = upper.Gap()!;
            GapDesign design = question.Problem.WithVents(ignition.Layout!, Area.FromSquareMillimeters(mm2)).Design;
            return Demo with { Flight = Demo.Flight with { Stages = Demo.Flight.Stages.Items.SetItem(1, upper with { Ignition = new StageIgnition.ByGap { Gap = ignition with { Design = design } } }) } };
        }
    }

    [Theory]
    [InlineData(3)]
    [InlineData(7)]
    public void Windows_over_lengths_in_parts_are_those_of_the_whole(int count)
    {
        StagingPlan plan = TestPlans.Through(TestPlans.Lighting); // a stated pulse, which a long gap cools too far
        #region plan-windows-parts
        GapQuestion question = plan.QuestionBelow("sustainer") with
        {
            Uncertain = [GapInputs.Breakaway(Distribution.Triangular(10, 20, 30))],
            Asked = new Assurance { Probability = 0.8, Confidence = 0.8, Cases = 20 },
        };
        PartitionedStudy<SweepLine<WindowResult>> map = question.VentWindowsInParts(
            Axis.Even("gap", "mm", 100, 340, 3), Axis.Factors("vent area", "mm2", 20, 200, 4));
        PartResult[] parts = [.. Enumerable.Range(1, count).Select(k => map.Run(new StudyOptions { Part = new StudyPart(k, count) }))];
        SweepLine<WindowResult> windows = map.Of(PartResult.Merge([.. parts]));
        #endregion
        SweepLine<WindowResult> whole = question.VentWindows(windows.Axis, windows.Results[0].Axis, new StudyOptions { Threads = 1 });
        Assert.Equal(whole.Results.Select(Edges), windows.Results.Select(Edges));
        Assert.Contains(windows.Results, r => r.Widest is { LowIsEndOfSearch: false });
        Assert.Empty(windows.Results[^1].Windows);
        GapQuestion surer = question with { Asked = question.Asked! with { Seed = 1 } };
        string refusal = Assert.Throws<ArgumentException>(() => PartResult.Merge(parts[0], surer.VentWindowsInParts(windows.Axis, windows.Results[0].Axis).Run(new StudyOptions { Part = new StudyPart(2, 999) }))).Message;
        Assert.Contains("20 cases of seed 1", refusal, StringComparison.Ordinal);
        Assert.Contains("over joint.breakaway", refusal, StringComparison.Ordinal);
        GapQuestion stirred = question with { Model = new GapModel.WellStirred() };
        Assert.Contains("TwoZone", Assert.Throws<ArgumentException>(
            () => PartResult.Merge(parts[0], stirred.VentWindowsInParts(windows.Axis, windows.Results[0].Axis).Run(new StudyOptions { Part = new StudyPart(2, 999) }))).Message, StringComparison.Ordinal);
        static ImmutableArray<Window> Windows(WindowResult result) => result.Windows;
        static string Edges(WindowResult result) => string.Join(";", Windows(result).Select(w => FormattableString.Invariant($"{w.Low:R} {w.High:R} {w.LowIsEndOfSearch} {w.HighIsEndOfSearch}")));
    }

    [Fact]
    public void A_gap_that_is_not_there_is_refused_by_name()
    {
        Assert.Contains("no gap below \"booster\". Lit through a gap: \"sustainer\"", Refusal(() => Demo.GapBelow("booster")), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("stage", () => Demo.QuestionBelow("booster"));
        Assert.Contains("no stage is", Refusal(() => TestPlans.Of(TestFlights.TwoStages()).QuestionBelow()), StringComparison.Ordinal);
        StagingPlan two = ThreeStages(TestPlans.Lighting);
        Assert.Contains("Say which gap, by the stage above it. Lit through a gap: \"middle\" and \"sustainer\"", Refusal(() => two.GapBelow()), StringComparison.Ordinal);
        Assert.NotEqual(two.GapBelow("middle").Bodies.MassAhead, two.GapBelow("sustainer").Bodies.MassAhead);
        StagingPlan wrong = Demo with { Flight = Demo.Flight with { Stages = [.. Demo.Flight.Stages, Demo.Flight.Stages[1]] } };
        Assert.Contains("FLT002", Assert.Throws<InvalidModelException>(() => wrong.GapBelow("sustainer")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gap_that_the_flight_does_not_come_to_is_told_with_the_reason()
    {
        ModelFinding finding = Assert.Throws<InvalidModelException>(() => ThreeStages(Dark).GapBelow("sustainer")).Findings[0];
        Assert.Equal(("GAP060", "Flight.Stages[2].Ignition"), (finding.Code, finding.Path));
        Assert.Contains("\"middle\" stays unlit.", finding.Message, StringComparison.Ordinal);
        // The gap that stays dark is itself reached: it can be asked.
        Assert.False(ThreeStages(Dark).GapBelow("middle").Solve().Outcome.IsLit);
    }

    private static StagingPlan ThreeStages(GapDesign first)
    {
        static StageIgnition Gap(GapDesign design) => new StageIgnition.ByGap { Gap = new GapIgnition { Design = design, Layout = TestPlans.Layout, HolePressureCoefficient = 0 } };
        return TestPlans.Of(TestFlights.Plan(TestFlights.Booster(), TestFlights.Booster("middle", Gap(first)), TestFlights.Sustainer(Gap(TestPlans.Lighting))));
    }

    private static string Refusal(Action act) => Assert.Throws<ArgumentException>(act).Message;
}
