using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Studies;
using Staging.Core.Tests.GroundTests;
using UnitsNet;

namespace Staging.Core.Tests.Reference;

/// <summary>The lines a user writes to read studies and ground tests: shown in the reference, run here.</summary>
public class StudyReadingSnippets
{
    [Fact]
    public void Cases_of_a_study()
    {
        #region study-cases
        var study = new ReliabilityStudy<double, double> // of any function: here a pendulum
        {
            Inputs = new(1.0, new StudyInput<double>("length", "m", Distribution.Uniform(0.5, 2), (_, v) => v)),
            Model = (length, _) => 2 * Math.PI * Math.Sqrt(length / 9.80665),
            Outcome = period => period > 2 ? "slow" : "fast",
            Measures = [new Measure<double>("period", "s", period => period)],
            Cases = 4096,
            Design = DesignKind.Independent,
            Stop = new StopRule { Outcome = "slow", HalfWidth = 0.03 }, // ends when that is known well enough
            KeepCases = true,
        };
        ReliabilityRun run = study.Run();
        Proportion slow = run.Probability("slow");
        MeasureSummary period = run.Measure("period");
        Percentile late = period.Percentile(95);
        Interval within = late.Interval;
        Console.WriteLine($"slow in {slow.Hits} of {slow.Cases}");
        Console.WriteLine($"95 % of the periods below {late.Value:F2} s ({within.Low:F2} to {within.High:F2})");
        #endregion
        #region study-columns
        CaseColumns columns = run.Columns();
        foreach (NumberColumn column in columns.Inputs.Concat(columns.Measures))
        {
            ColumnName name = column.Name;
            Console.WriteLine($"{name.Name} [{name.Unit}]: {column.At(row: 0)}");
        }

        columns.WriteCsv(Console.Out);
        #endregion
        Assert.True(run.StoppedEarly);
        Assert.InRange(late.Value, within.Low, within.High);
        Assert.Equal(run.Cases, columns.Index.Length);
    }

    [Fact]
    public void A_window_read()
    {
        #region window-read
        Axis axis = Axis.Even("x", "-", 0, 10, 11);
        WindowResult found = Sweep.Windows(axis, 0.01, (x, _) => x is > 2.5 and < 7.5);
        if (found.Widest is Window widest)
            Console.WriteLine($"holds from {widest.Low:F2} to {widest.High:F2}{(widest.HighIsEndOfSearch ? " at least" : "")}");
        #endregion
        Assert.Equal(2.5, found.Widest!.Low, 0.02);
    }

    [Fact]
    public void A_fit_read()
    {
        #region fitted-input
        MeasuredTrace trace = MeasuredTrace.Of("level", times: [0, 1, 2, 3, 4], values: [4.02, 2.41, 1.49, 0.88, 0.55]);
        var inputs = new InputSet<double>(1, new StudyInput<double>("rate", "1/s", Distribution.Uniform(0.1, 2), (_, v) => v));
        CalibrationResult<double> fit = inputs.Fit(trace, (rate, times, _) => [.. times.Select(t => 4 * Math.Exp(-rate * t))]);
        FittedInput rate = fit.Inputs[0];
        Console.WriteLine($"{rate.Input}: {rate.Value:F3}, 95 % {rate.Interval}{(rate.IsAtEnd ? ", at the end of its range" : "")}");
        #endregion
        Assert.Equal(0.5, rate.Value, 0.02);
    }

    [Fact]
    public void A_sweep_of_ones_own_results_in_parts()
    {
        #region part-codec
        PartCodec<(double Height, double Time)> codec = new( // how a result stands in the text of a part, and comes back
            back => (back[0]!.Value, back[1]!.Value),
            new Measure<(double Height, double Time)>("height", "m", r => r.Height),
            new Measure<(double Height, double Time)>("time", "s", r => r.Time));
        PartitionedStudy<SweepLine<(double Height, double Time)>> study = Sweep.AlongInParts(
            Axis.Even("speed", "m/s", 10, 50, 5), (speed, _) => (speed * speed / 19.6133, speed / 9.80665), codec);
        PartResult one = study.Run(new StudyOptions { Part = new StudyPart(1, 2) }), two = study.Run(new StudyOptions { Part = new StudyPart(2, 2) });
        SweepLine<(double Height, double Time)> line = study.Of(PartResult.Merge(one, two));
        #endregion
        Assert.Equal(1, line.Results[0].Time, 0.03);
    }

    [Fact]
    public void Numbers_of_a_case()
    {
        #region case-draws
        var draws = new CaseDraws(seed: 7, number: 42); // the same on any thread and in any part
        double share = draws.Uniform(draw: 0), error = draws.Normal(draw: 1);
        #endregion
        Assert.Equal((share, error), (new CaseDraws(7, 42).Uniform(0), new CaseDraws(7, 42).Normal(1)));
        Assert.InRange(share, 0, 1);
    }

    [Fact]
    public void Ground_tests_from_code()
    {
        GapProblem gap = CheapGap.Of(120), longer = CheapGap.Of(250);
        #region ground-test-series
        var series = new GroundTestSeries
        {
            Tests =
            [
                new GroundTest
                {
                    Name = "first",
                    Gap = gap,
                    Seen = Seen.Lit,
                    Lit = new TimeSeen { At = Duration.FromMilliseconds(12), Within = Duration.FromMilliseconds(2) },
                },
                new GroundTest { Name = "longer", Gap = longer, Seen = Seen.PartedFirst },
            ],
            Discrepancy = ModelDiscrepancy.Judged with { WrongOutcome = 0.05 },
            Unknowns = [.. GroundTestInputs.JudgedFor(gap.Design)],
        };
        Console.WriteLine(series.ToJson());
        #endregion
        Assert.Empty(series.Check().Where(f => f.Severity == FindingSeverity.Error));
    }

    [Fact]
    public void What_was_learned()
    {
        GapProblem next = CheapGap.Of(180);
        GroundTest lit = new() { Name = "lit", Gap = CheapGap.Of(120), Seen = Seen.Lit }, longer = lit with { Name = "longer", Gap = next };
        Learned learned = CheapGap.Learn(new GroundTestSeries { Tests = [lit] }, 256);
        #region learned-read
        foreach (LearnedInput input in learned.Posterior.Inputs)
            Console.WriteLine($"{input.Input}: {input.MedianBefore:G3} before, {input.MedianAfter:G3} after, {input.Bits:F2} bit");
        foreach (LearnedObservation test in learned.Posterior.Observations)
            Console.WriteLine($"{test.Name}: {test.BitsAlone:F2} bit alone, {test.BitsGivenOthers:F2} given the others");
        LearnedOdds odds = learned.Odds(next);
        Console.WriteLine($"the next one lights: {odds.Before:P0} before, {odds.After:P0} after");
        TestRanking ranking = learned.MostInformative([longer]);
        ExpectedInformation most = ranking.Tests[0];
        #endregion
        Assert.Equal("longer", most.Name);
        Assert.True(odds.After >= odds.Before);
    }

    [Fact]
    public void Lists_equal_by_value()
    {
        #region equatable-lists
        EquatableArray<double> one = [1, 2, 3], two = EquatableArray.Create([1.0, 2.0, 3.0]);
        bool same = one == two; // by content; so records that hold them compare by content too
        ImmutableArray<double> items = one.Items;
        #endregion
        Assert.True(same);
        Assert.Equal(3, items.Length);
    }
}
