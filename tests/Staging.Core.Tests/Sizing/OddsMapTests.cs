using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

public class OddsMapTests
{
    private const int Cases = 12;

    private static readonly GapQuestion Question = new()
    {
        Problem = StartingGaps.Bore18mm,
        Layout = new VentLayout { HoleCount = 4 },
        Uncertain = GapInputs.Judged,
    };

    private static readonly Axis Gaps = Axis.Even("gap", "mm", 60, 660, 9), Areas = Axis.Factors("vent area", "mm2", 5, 500, 10);

    private static readonly OddsMap Map = Question.OddsOver(Gaps, Areas, Cases);

    [Fact]
    public void Every_cell_counts_what_all_its_runs_would()
    {
        var cases = new ReliabilityCounts(Question);
        for (int gap = 0; gap < Gaps.Values.Length; gap += 2)
        {
            for (int area = 0; area < Areas.Values.Length; area += 3)
                Assert.Equal(cases.Lit(Gaps.Values[gap], Areas.Values[area]), Map.At(gap, area).Lit);
        }
    }

    [Fact]
    public void It_takes_fewer_runs_than_cells_of_cases()
    {
        Assert.InRange(Map.Runs, 4 * Cases, 9 * 10 * Cases - 1);
        Assert.All(Map.Cells.Results, c => Assert.Equal(Cases, c.Cases));
    }

    [Fact]
    public void The_best_cell_is_named_with_its_place()
    {
        Assert.Equal(Map.Cells.Results.Max(c => c.Lit), Map.Best.Lit);
        int across = Gaps.Values.Items.IndexOf(Map.BestGap.Millimeters);
        Assert.Contains(Map.Best, Enumerable.Range(0, Areas.Values.Length).Select(up => Map.At(across, up)));
        Assert.StartsWith("Best at a gap of ", Map.ToString(), StringComparison.Ordinal);
        Assert.Contains($"{Map.Best}", Map.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_cell_says_what_fails_and_how_sure_that_is()
    {
        #region odds-cell
        GapOdds cell = Map.At(gap: 2, area: 4);
        Interval sure = cell.Odds.Wilson();
        string fails = cell.PartedFirst > cell.StayedCold ? "the joint gives way first" : "too little heat comes to the grain";
        Console.WriteLine($"{cell}: {sure.Low:P0} to {sure.High:P0} light; of the others most often {fails}");
        #endregion
        Assert.Equal(Cases, cell.Lit + cell.PartedFirst + cell.StayedCold + cell.NoAnswer);
        Assert.InRange(cell.Odds.Estimate, sure.Low, sure.High);
    }

    [Fact]
    public void Too_little_area_parts_the_stages_and_too_much_stays_cold()
    {
        GapOdds least = Map.At(0, 0), most = Map.At(Gaps.Values.Length - 1, Areas.Values.Length - 1);
        Assert.True(least.PartedFirst > least.StayedCold);
        Assert.True(most.StayedCold > most.PartedFirst);
    }

    [Fact]
    public void Threads_and_parts_do_not_change_a_count()
    {
        PartitionedStudy<OddsMap> study = Question.OddsOverInParts(Gaps, Areas, Cases);
        OddsMap merged = study.Of(PartResult.Merge([.. Enumerable.Range(1, 3).Select(k => study.Run(new StudyOptions { Threads = 1, Part = new StudyPart(k, 3) }))]));
        Assert.Equal(Csv(Map), Csv(merged));
        Assert.Equal(Map.Runs, merged.Runs);
    }

    [Fact]
    public void Another_seed_draws_other_cases() =>
        Assert.NotEqual(Csv(Map), Csv(Question.OddsOver(Gaps, Areas, Cases, seed: 1)));

    [Fact]
    public void What_cannot_be_asked_is_refused_by_name()
    {
        Assert.Contains("STU001", Refusal(() => (Question with { Uncertain = [] }).OddsOver(Gaps, Areas)).Message, StringComparison.Ordinal);
        Assert.Contains("At a gap of 60 mm with 0.0001 mm2 of vents",
            Refusal(() => Question.OddsOver(Gaps, Axis.Factors("vent area", "mm2", 1e-4, 100, 3))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Question.OddsOver(Axis.Even("gap", "m", 0.1, 0.2, 2), Areas));
        Assert.Throws<ArgumentOutOfRangeException>(() => Question.OddsOver(Gaps, Areas, cases: 0));
        Assert.Contains("STU016", Refusal(() => Question.OddsOver(Gaps, Areas, cases: 10_000_000)).Message, StringComparison.Ordinal);
    }

    private static InvalidModelException Refusal(Action ask) => Assert.Throws<InvalidModelException>(ask);

    private static string Csv(OddsMap map)
    {
        using var text = new StringWriter();
        map.WriteCsv(text);
        return text.ToString();
    }

    /// <summary>The same cases, run one by one at a cell by a reliability study.</summary>
    private sealed class ReliabilityCounts(GapQuestion question)
    {
        public long Lit(double gap_mm, double area_mm2)
        {
            GapDesign design = question.Problem.Design;
            GapProblem problem = (question.Problem with { Design = design with { Tube = design.Tube with { Length = Length.FromMillimeters(gap_mm) } } })
                .WithVents(question.Layout, Area.FromSquareMillimeters(area_mm2));
            var study = new ReliabilityStudy<GapProblem, GapOutcome>
            {
                Inputs = new InputSet<GapProblem>(problem, question.Uncertain),
                Model = (p, stop) => p.Solve(question.Model, SolverOptions.ForStudies, cancellationToken: stop).Outcome,
                Outcome = outcome => outcome.IsLitBeforeParting ? "lit" : "not",
                Cases = Cases,
            };
            return study.Run().Probability("lit").Hits;
        }
    }
}
