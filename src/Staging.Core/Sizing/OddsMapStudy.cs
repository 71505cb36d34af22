using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Studies;

namespace Staging.Core.Sizing;

/// <summary>
/// The odds of a gap over length and vent area, case by case: the outline of what comes of a case is followed over the
/// whole map, and all maps are counted together.
/// </summary>
internal static class OddsMapStudy
{
    /// <summary>Kinds of answer of a case in a cell.</summary>
    private const int Lit = 0, PartedFirst = 1, StayedCold = 2, NoAnswer = 3;

    /// <summary>The study in parts: one row a case, the number of runs and then the answer in each cell.</summary>
    public static PartitionedStudy<OddsMap> InParts(GapQuestion question, Axis gaps, Axis areas, int cases, ulong seed)
    {
        GapWindows.In(gaps, "mm");
        GapWindows.In(areas, "mm2");
        Guard.In(cases, 1, 10_000_000, nameof(cases));
        if (question.Uncertain.Length == 0)
            throw GapWindows.Refusal("STU001", nameof(question.Uncertain),
                "Odds are asked for, and no input is uncertain; give one or more.");
        int wide = gaps.Values.Length, high = areas.Values.Length;
        StudySize.Check((long)wide * high, 1);
        StudySize.Check(cases, 1 + wide * high);
        GapProblem[] cells = [.. Enumerable.Range(0, wide * high).Select(i =>
            new GapPoint(gaps.Values[i % wide], areas.Values[i / wide]).Told(at => GapWindows.At(question, at)))];
        var inputs = new InputSet<GapProblem>(cells[0], question.Uncertain);
        var design = new SampleDesign(DesignKind.Independent, cases, inputs.Inputs.Length, seed);
        var heading = new StudyHeading(cases, seed, $"odds over {gaps} and {areas}, {GapWindows.ModelText(question.Model)}",
            inputs.Names, inputs.Spreads,
            [new ColumnName("runs", "-"), .. Enumerable.Range(1, wide * high).Select(i => new ColumnName($"answer {i}", "-"))]);
        return new PartitionedStudy<OddsMap>(heading, Row, Counted);

        ImmutableArray<double> Row(long index, CancellationToken stop)
        {
            double[] values = inputs.Values(design, index);
            (int[] answers, int asked) = Outline.Of(wide, high, Answer);
            return [asked, .. answers.Select(a => (double)a)];

            int Answer(int gap, int area) => Kind(question, inputs, cells[area * wide + gap], values, stop);
        }

        OddsMap Counted(ImmutableArray<ImmutableArray<double>> rows) => new(
            new SweepMap<GapOdds>(gaps, areas, [.. Enumerable.Range(1, wide * high).Select(i => Count(rows, i))]),
            cases, rows.Sum(row => (long)row[0]));
    }

    /// <summary>The answers in one column of all cases, counted.</summary>
    private static GapOdds Count(ImmutableArray<ImmutableArray<double>> rows, int column)
    {
        Span<int> of = stackalloc int[NoAnswer + 1];
        of.Clear();
        foreach (ImmutableArray<double> row in rows)
            of[(int)Guard.In(row[column], Lit, NoAnswer, "-", nameof(rows))]++;
        return new GapOdds(of[Lit], of[PartedFirst], of[StayedCold], of[NoAnswer]);
    }

    private static int Kind(GapQuestion question, InputSet<GapProblem> inputs, GapProblem cell, double[] values, CancellationToken stop)
    {
        try
        {
            GapRun run = inputs.Of(cell, values).SolveUntilLit(question.Model, question.Solver.OfCases, stop);
            GapOutcome outcome = run.Outcome;
            return outcome.Match(_ => outcome.IsLitBeforeParting ? Lit : PartedFirst, _ => PartedFirst, _ => StayedCold, _ => StayedCold,
                _ => StayedCold, _ => NoAnswer);
        }
        catch (ArgumentException)
        {
            return NoAnswer;
        }
    }
}
