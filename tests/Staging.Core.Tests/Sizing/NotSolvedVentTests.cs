using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Discharge;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>A run that was not solved is neither lit nor unlit: it ends an interval, and a search of a question, without an answer.</summary>
public class NotSolvedVentTests
{
    /// <summary>Small vents let the pressure rise to where the law knows nothing; the joint would have held.</summary>
    private static readonly GapProblem Gap = Bench.Gap.With(d => d with { Joint = Bench.Joint(200), DischargeLaw = new UndefinedAbove(60e3) });

    [Fact]
    public void A_run_that_was_not_solved_bounds_the_interval_and_is_told()
    {
        VentAdvice advice = Gap.SizeVents(TestPlans.Layout);
        VentTrial first = advice.Trials.First(t => t.Outcome.IsLit);
        VentTrial before = advice.Trials[advice.Trials.IndexOf(first) - 1];
        Assert.IsType<GapOutcome.NotSolved>(before.Outcome);
        // No edge is searched between what lights and what was not solved.
        Assert.Equal(first.TotalArea, advice.Windows[0].Min);
        int count = advice.Trials.Count(t => t.Outcome is GapOutcome.NotSolved);
        Assert.Contains(FormattableString.Invariant($"Not solved, and so neither lit nor unlit: {count} of the areas tried, from 0.5 to {before.TotalArea.SquareMillimeters:F1} mm2."), advice.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_was_solved_nothing_is_called_dark()
    {
        VentAdvice advice = Gap.SizeVents(TestPlans.Layout, options: new() { MaxSteps = 1 });
        Assert.Empty(advice.Windows);
        Assert.StartsWith("No vent area can be judged: no run was solved.", advice.Reason, StringComparison.Ordinal);
    }

    /// <summary>A law that fails for one drill, the one that was taken: the areas of the search are other diameters.</summary>
    [Fact]
    public void A_drilled_gap_that_was_not_solved_is_not_called_cold()
    {
        GapProblem holding = Bench.Gap.With(d => d with { Joint = Bench.Joint(200) });
        Length drill = holding.SizeVents(TestPlans.Layout).Walls[0].Drilled!.Drill.Diameter;
        VentAdvice blind = holding.With(d => d with { DischargeLaw = new Blind(drill.Meters) }).SizeVents(TestPlans.Layout);
        Assert.IsType<GapOutcome.NotSolved>(blind.Run!.Outcome);
        string text = blind.ToString().ReplaceLineEndings(" ");
        Assert.Contains("With these holes the run was not solved: ", text, StringComparison.Ordinal);
        Assert.DoesNotContain("With these holes it does not light", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Another drill series", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_question_is_not_answered_at_a_point_that_was_not_solved()
    {
        var question = new GapQuestion { Problem = Gap, Layout = TestPlans.Layout };
        Axis areas = Axis.Factors("vent area", "mm2", 1, 100, 3);
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => question.VentWindow(Gap.Design.Tube.Length, areas)).Findings);
        Assert.Equal("SIZ004", finding.Code);
        Assert.Contains("neither lit nor unlit", finding.Message, StringComparison.Ordinal);
        Assert.Contains("with 1 mm2 of vents", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cases_that_were_not_solved_decide_no_probability()
    {
        // The fragments make the pressure: with few the gap is solved and stays dark, with many it is not solved.
        GapQuestion question = new()
        {
            Problem = Gap,
            Layout = TestPlans.Layout,
            Uncertain = [GapInputs.FragmentMass(Distribution.Discrete((0.01, 0.5), (0.5, 0.5)))],
            Asked = new Assurance { Probability = 0.3, Confidence = 0.5, Cases = 20 },
        };
        Area area = Area.FromSquareMillimeters(40);
        bool IsSolved(double grams) => Gap.With(d => d with { Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(grams) } } }).WithVents(TestPlans.Layout, area).Solve().Outcome is not GapOutcome.NotSolved;
        Assert.True(IsSolved(0.01));
        Assert.False(IsSolved(0.5));
        Axis lengths = Axis.Even("gap", "mm", Gap.Design.Tube.Length.Millimeters, Gap.Design.Tube.Length.Millimeters + 1, 2);
        InvalidModelException refused = Assert.Throws<InvalidModelException>(() => question.LongestGap(area, lengths));
        Assert.Equal("SIZ004", Assert.Single(refused.Findings).Code);
        // Where they could not turn the answer it stands: the solved half of the cases does not light.
        Assert.Empty((question with { Asked = question.Asked! with { Probability = 0.9 } }).LongestGap(area, lengths).Windows);
    }

    /// <summary>A user's law that knows nothing of holes of one diameter [m].</summary>
    private sealed class Blind(double diameter) : IDischargeLaw
    {
        public ValidityRange Validity => SharpEdgedLaw.Perry.Validity;

        public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
            Math.Abs(conditions.HoleDiameter_m - diameter) < 1e-9 ? double.NaN : SharpEdgedLaw.Perry.MassFlux_kg_per_m2s(conditions);
    }
}
