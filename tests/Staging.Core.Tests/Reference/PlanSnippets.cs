using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Tests.Plans;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes with plans and sizes of vents: shown in the reference, run here.</summary>
public class PlanSnippets
{
    [Fact]
    public void A_plan_with_mistakes()
    {
        string json = DemoPlan.Short.Replace("\"name\"", "\"nmae\"", StringComparison.Ordinal);
        using var told = new StringWriter();
        #region plan-problems
        try
        {
            StagingPlan plan = StagingPlan.Parse(json);
            Console.WriteLine(plan.Review());
        }
        catch (PlanFormatException refused) // the text: every mistake at once, each with its place
        {
            foreach (PlanProblem problem in refused.Problems)
                told.WriteLine($"{problem.JsonPath}: {problem.Message}");
        }
        catch (InvalidModelException refused) // readable, but it does not hang together
        {
            foreach (ModelFinding finding in refused.Findings.Where(f => f.Severity == FindingSeverity.Error))
                told.WriteLine($"{finding.Code} {finding.Written ?? finding.Path}: {finding.Message}");
        }
        #endregion
        Assert.Contains("nmae", told.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_of_a_check()
    {
        StagingPlan plan = DemoPlan.Plan;
        #region plan-check
        foreach (ModelFinding finding in plan.Check())
            Console.WriteLine($"{finding.Severity}: {finding.Code} at {finding.Path}: {finding.Message}");
        bool flies = plan.Check().All(f => f.Severity != FindingSeverity.Error);
        string brief = plan.ToJson(PlanForm.Brief), full = plan.ToJson(PlanForm.Full); // with every value that was left out
        #endregion
        Assert.True(flies);
        Assert.True(brief.Length < full.Length);
    }

    [Fact]
    public void Advice_on_vents()
    {
        GapProblem gap = StartingGaps.Bore18mm.With(breakaway: Force.FromNewtons(40));
        VentLayout layout = TestPlans.Layout;
        #region vent-windows
        VentAdvice advice = gap.SizeVents(layout);
        foreach (VentWindow window in advice.Windows)
            Console.WriteLine($"lights from {window.Min.SquareMillimeters:F0} to {window.Max.SquareMillimeters:F0} mm2");
        VentTrial least = advice.Trials[0]; // every area that was tried, with its outcome
        foreach (WallHoles wall in advice.Walls)
            Console.WriteLine($"{wall.Wall}: {wall.Drilled}");
        GapProblem vented = gap.WithVents(layout, advice.Recommended ?? least.TotalArea);
        #endregion
        Assert.NotEmpty(advice.Windows);
        Assert.True(vented.Solve().Outcome.IsLit);
    }

    [Fact]
    public void Bracket()
    {
        VentLayout layout = TestPlans.Layout;
        GapProblem gap = StartingGaps.Bore18mm.WithVents(layout, Area.FromSquareMillimeters(60));
        #region gap-bracket
        GapBracket bracket = gap.Bracket(layout); // over the ends of what is least known
        if (bracket.Lights == BracketVerdict.InPart)
            Console.WriteLine($"lights in part; {bracket.Decides} decides most");
        foreach (BracketCase corner in bracket.Cases)
            Console.WriteLine($"{string.Join(", ", corner.Ends)}: {corner.Outcome}");
        #endregion
        Assert.Equal(BracketVerdict.InPart, bracket.Lights);
        Assert.NotNull(bracket.Decides);
    }

    [Fact]
    public void Verdicts_and_cautions()
    {
        StagingPlan plan = DemoPlan.Plan;
        #region review-read
        StagingReview review = plan.Review();
        foreach (StageVerdict stage in review.Stages.Where(s => s.Verdict != Verdict.Lights))
            Console.WriteLine($"{stage.Stage}: {stage.Reason}");
        foreach (GapReview gap in review.Gaps)
            Console.WriteLine($"{gap.Staging.UpperStage}: {gap.Run.Outcome}; {gap.Advice?.Reason}");
        foreach (Caution caution in review.Cautions)
            Console.WriteLine($"{caution.Code} {caution.Subject}: {caution.Text} ({caution.Rule.Source})");
        #endregion
        Assert.NotEmpty(review.Cautions);
    }

    [Fact]
    public void Odds_read()
    {
        StagingPlan plan = DemoPlan.Plan;
        #region odds-read
        Odds odds = plan.Odds(cases: 64);
        foreach (StageOdds stage in odds.Stages)
            Console.WriteLine($"{stage.Stage} lights: {stage.Lights.Estimate:P0}, 95 % within {stage.Lights.Wilson()}");
        InputRanking ranking = odds.WhatMatters();
        foreach (RankedInput input in ranking.Inputs.Take(3))
            Console.WriteLine($"{input.Input}: {input.Correlation:F2}, {input.Interval}");
        #endregion
        Assert.Equal(64, ranking.Cases);
    }
}
