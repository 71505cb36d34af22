using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Studies;

public class ReliabilityTests
{
    public static TheoryData<DesignKind> Designs => [DesignKind.Independent, DesignKind.LatinHypercube, DesignKind.LowDiscrepancy];

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_bits_are_the_same_with_one_two_and_eight_threads(DesignKind design)
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study() with { Design = design, KeepCases = true };
        string one = Everything(study.Run(new StudyOptions { Threads = 1 }));
        Assert.Equal(one, Everything(study.Run(new StudyOptions { Threads = 2 })));
        Assert.Equal(one, Everything(study.Run(new StudyOptions { Threads = 8 })));
        Assert.Equal(one, Everything(study.Run()));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_bits_are_the_same_from_one_three_and_seven_parts_in_any_order(DesignKind design)
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(997) with { Design = design, KeepCases = true };
        string whole = Everything(study.Run());
        foreach (int parts in new[] { 1, 3, 7 })
        {
            ReliabilityRun[] runs = [.. Enumerable.Range(1, parts).Reverse().Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, parts), Threads = k % 2 + 1 }))];
            ReliabilityRun merged = ReliabilityRun.Merge([.. runs]);
            Assert.True(merged.IsWhole);
            Assert.Equal(whole, Everything(merged));
            Assert.Equal(parts == 1, runs[0].IsWhole);
        }
    }

    [Fact]
    public void Parts_merge_in_steps_too()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(100);
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 4).Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, 4) }))];
        ReliabilityRun odd = ReliabilityRun.Merge(parts[0], parts[2]), even = ReliabilityRun.Merge(parts[3], parts[1]);
        Assert.False(odd.IsWhole);
        Assert.Equal(Text(study.Run()), Text(ReliabilityRun.Merge(even, odd)));
    }

    /// <summary>Of a measure that no case has nothing is known, and of one case no scatter.</summary>
    [Fact]
    public void A_measure_that_no_case_has_is_told_as_that()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(1) with { Measures = [new Measure<double>("none", "s", _ => null), new Measure<double>("one", "s", _ => 3)] };
        MeasureSummary none = study.Run().Measures[0], one = study.Run().Measures[1];
        Assert.Equal((0, null, null, null, null), (none.Count, none.Mean, none.StandardDeviation, none.Min, none.Max));
        Assert.EndsWith(": no case", none.ToString(), StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => none.Percentile(50));
        Assert.Equal((1, 3.0, null, 3.0, 3.0), (one.Count, one.Mean, one.StandardDeviation, one.Min, one.Max));
    }

    [Fact]
    public void Kept_cases_are_in_order_after_a_merge_in_steps()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(100) with { KeepCases = true };
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 4).Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, 4) }))];
        ReliabilityRun merged = ReliabilityRun.Merge(ReliabilityRun.Merge(parts[0], parts[2]), ReliabilityRun.Merge(parts[3], parts[1]));
        Assert.Equal(Enumerable.Range(0, 100).Select(i => (long)i), merged.Columns().Index.ToArray());
        Assert.Equal(Everything(study.Run()), Everything(merged));
    }

    [Fact]
    public void Parts_that_overlap_or_belong_elsewhere_are_refused()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(100);
        ReliabilityRun first = study.Run(new StudyOptions { Part = new StudyPart(1, 2) });
        Assert.Contains("Case 0 is in two", Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge(first, first)).Message, StringComparison.Ordinal);
        ReliabilityRun stranger = (study with { Seed = 12 }).Run(new StudyOptions { Part = new StudyPart(2, 2) });
        Assert.Contains("seeds 11 and 12", Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge(first, stranger)).Message, StringComparison.Ordinal);
        ReliabilityRun wider = (study with { Inputs = new(Oscillator.Inputs.Nominal, [Oscillator.Inputs.Inputs[0] with { Spread = Distribution.Triangular(0.5, 1, 2.1) }, Oscillator.Inputs.Inputs[1]]) })
            .Run(new StudyOptions { Part = new StudyPart(2, 2) });
        Assert.Contains("have spreads mass triangular from 0.5 over 1 to 2 and mass triangular from 0.5 over 1 to 2.1.", Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge(first, wider)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge());
        Assert.Contains("Part 2 is null", Assert.Throws<ArgumentException>("parts", () => ReliabilityRun.Merge(first, null!)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("parts", () => ReliabilityRun.Merge(first, first));
        ReliabilityRun stopped = (study with { Cases = 1000, Stop = new StopRule { Outcome = "Slow", HalfWidth = 0.1 } }).Run();
        ReliabilityRun rest = (study with { Cases = 1000 }).Run(new StudyOptions { Part = new StudyPart(2, 2) });
        Assert.True(stopped.StoppedEarly);
        Assert.Contains("stopped early", Assert.Throws<ArgumentException>(() => ReliabilityRun.Merge(stopped, rest)).Message, StringComparison.Ordinal);
        Assert.Equal(Text(stopped), Text(ReliabilityRun.Merge(stopped)));
    }

    [Fact]
    public void Parts_without_a_case_merge_with_any_others()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(3);
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 7).Select(k => Read(Text(study.Run(new StudyOptions { Part = new StudyPart(k, 7) }))))];
        Assert.Equal([0, 0, 1, 0, 1, 0, 1], parts.Select(p => (int)p.Cases));
        Assert.Equal(Text(study.Run()), Text(ReliabilityRun.Merge([.. parts])));
        Assert.Equal(Text(study.Run()), Text(ReliabilityRun.Merge(study.Run(), parts[3])));
    }

    [Fact]
    public void A_part_survives_its_text_bit_by_bit()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(500);
        ReliabilityRun[] home = [.. Enumerable.Range(1, 3).Select(k => Read(Text(study.Run(new StudyOptions { Part = new StudyPart(k, 3) }))))];
        Assert.Equal(Text(study.Run()), Text(ReliabilityRun.Merge([.. home])));
        Assert.Contains("Line 1", Assert.Throws<FormatException>(() => Read("something else")).Message, StringComparison.Ordinal);
        Assert.Contains("Line 3", Assert.Throws<FormatException>(() => Read(Text(home[0]).Replace("seed 11", "seed x", StringComparison.Ordinal))).Message, StringComparison.Ordinal);
        Assert.Throws<FormatException>(() => Read(Text(home[0]).Replace("outcome ", "outcome 1", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("kg_m2")]
    [InlineData("W/(m K)")]
    [InlineData("a\\_b \\n_")]
    [InlineData("-")]
    public void A_unit_survives_the_text_of_a_part(string unit)
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(50) with { Measures = [new Measure<double>("period", unit, p => p)] };
        Assert.Equal(unit, Read(Text(study.Run())).Measures[0].Name.Unit);
        // So that a part run here and one that came home as text still belong to one study.
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 2).Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, 2) }))];
        Assert.Equal(Text(study.Run()), Text(ReliabilityRun.Merge(parts[0], Read(Text(parts[1])))));
    }

    [Fact]
    public void A_unit_of_two_lines_is_refused() => Assert.Throws<ArgumentException>("unit", () => new Measure<double>("period", "two\nlines", p => p));

    [Theory]
    [InlineData("range 0 500", "range 0 300\nrange 200 400", "case 200 is in two ranges")]
    [InlineData("range 0 500", "range 500 0", "Line 14 of the study part: there is no range from 500 to 0 of 500 cases")]
    [InlineData("range 0 500", "range 1 501", "no range from 1 to 501")]
    [InlineData("range 0 500\n", "", "does not add up")]
    [InlineData("outcome ", "outcome -", "Line 16 of the study part: the count of an outcome has to be a whole number, 0 or more, not \"-")]
    [InlineData("seed 11\n", "", "Line 3 of the study part: \"seed\" belongs here, not \"design Independent\"")]
    [InlineData("seed 11\n", "seed 11\nseed 11\n", "Line 4")]
    [InlineData("design Independent", "design Even", "the design \"Even\" is not known")]
    [InlineData("stopped-early 0", "stopped-early no", "0 or 1 belongs here")]
    [InlineData("ends ", "ends 1,", "the count of a measure")]
    [InlineData("sum ", "sum x", "Line 20 of the study part: an exact sum is written in hexadecimal digits, not \"x")]
    [InlineData("\nend\n", "\n", "but the text is over")]
    [InlineData("\nend\n", "\nend\nend\n", "nothing may follow the end")]
    [InlineData("measure 1 s period", "measure 1 s\\x period", "backslash")]
    public void A_text_that_does_not_add_up_is_no_part(string line, string other, string says) =>
        Assert.Contains(says, Assert.Throws<FormatException>(() => Read(Text(Oscillator.Study(500).Run()).Replace(line, other, StringComparison.Ordinal))).Message, StringComparison.Ordinal);

    [Fact]
    public void A_sum_beyond_the_register_is_no_sum()
    {
        string text = Text(Oscillator.Study(500).Run());
        string longer = text.Replace("\nsum ", "\nsum 1" + new string('0', 1200), StringComparison.Ordinal);
        Assert.Contains("an exact sum is written in hexadecimal digits", Assert.Throws<FormatException>(() => Read(longer)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_study_stops_where_the_half_width_is_met_whatever_the_threads()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(100_000) with { Stop = new StopRule { Outcome = "Slow", HalfWidth = 0.03 } };
        ReliabilityRun run = study.Run(new StudyOptions { Threads = 8 });
        Assert.True(run.StoppedEarly && run.IsWhole);
        Assert.True(run.Probability("Slow").ClopperPearson().HalfWidth <= 0.03);
        Assert.Equal(0, run.Cases % 64);
        var reports = new List<StudyProgress>();
        study.Run(progress: new Listener(reports.Add));
        Assert.Equal((run.Cases, run.Cases, 1.0), (reports[^1].Done, reports[^1].Total, reports[^1].Fraction));
        ReliabilityRun before = (study with { Stop = null, Cases = run.Cases - 64 }).Run();
        Assert.True(before.Probability("Slow").ClopperPearson().HalfWidth > 0.03, "it could have stopped earlier");
        Assert.Equal(Text(run), Text(study.Run(new StudyOptions { Threads = 1 })));
    }

    [Fact]
    public void What_cannot_stop_early_is_refused_with_its_code()
    {
        var rule = new StopRule { Outcome = "Slow", HalfWidth = 0.03 };
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study() with { Stop = rule };
        Assert.Equal("STU004", Code(() => (study with { Design = DesignKind.LatinHypercube }).Run()));
        Assert.Equal("STU006", Code(() => study.Run(new StudyOptions { Part = new StudyPart(1, 2) })));
        Assert.Equal("STU002", Code(() => (Oscillator.Study() with { Measures = [new Measure<double>("a", "s", p => p), new Measure<double>("a", "s", p => p)] }).Run()));
    }

    [Fact]
    public void Refused_cases_are_counted_and_told()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study() with
        {
            Model = (m, _) => m.Mass > 1.5 ? throw new ArgumentOutOfRangeException(nameof(m), "too heavy") : m.Period,
        };
        ReliabilityRun run = study.Run();
        // P(mass > 1.5) of the triangle 0.5, 1, 2 is 0.5^2/(1.5 x 1) = 1/6; 1000 cases scatter by 0.012.
        Assert.InRange(run.Probability(ReliabilityRun.Refused).Estimate, 1 / 6.0 - 0.04, 1 / 6.0 + 0.04);
        Assert.Equal(1000, run.Outcomes.Values.Sum());
        Assert.Equal(10, run.Refusals.Count);
        Assert.All(run.Refusals.Values, r => Assert.Contains("too heavy", r, StringComparison.Ordinal));
        Assert.Equal(run.Measure("period").Count, 1000 - run.Outcomes[ReliabilityRun.Refused]);
    }

    [Fact]
    public void A_case_without_an_outcome_is_told_by_its_number() => Assert.Equal("Case 0 has no outcome.", Assert.Throws<InvalidOperationException>(
        () => (Oscillator.Study(3) with { Outcome = _ => null! }).Run(new StudyOptions { Threads = 1 })).Message);

    [Fact]
    public void A_part_without_cases_has_no_share()
    {
        ReliabilityRun[] parts = [.. Enumerable.Range(1, 2).Select(k => Oscillator.Study(1).Run(new StudyOptions { Part = new StudyPart(k, 2) }))];
        Assert.Throws<ArgumentOutOfRangeException>(() => parts.Single(p => p.Cases == 0).Probability("any"));
    }

    [Fact]
    public void One_case_has_no_scatter()
    {
        MeasureSummary one = Oscillator.Study(1).Run().Measures[0], two = Oscillator.Study(2).Run().Measures[0];
        Assert.DoesNotContain(", s ", one.ToString(), StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($", s {two.StandardDeviation:G3}, 5 % "), two.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Any_other_exception_ends_the_study_the_first_in_order()
    {
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study() with { Model = (m, _) => throw new InvalidOperationException($"mass {m.Mass:R}") };
        double first = Oscillator.Inputs.Values(new SampleDesign(DesignKind.Independent, 1000, 2, 11), 0)[0];
        Assert.Equal($"mass {first:R}", Assert.Throws<InvalidOperationException>(() => study.Run(new StudyOptions { Threads = 4 })).Message);
        Assert.Throws<ArithmeticException>(() => (Oscillator.Study() with { Measures = [new Measure<double>("x", "-", _ => double.NaN)] }).Run());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void A_study_can_be_cancelled(int threads)
    {
        using var source = new CancellationTokenSource();
        ReliabilityStudy<Oscillator, double> study = Oscillator.Study(1_000_000);
        Assert.ThrowsAny<OperationCanceledException>(() => study.Run(new StudyOptions { Threads = threads }, new Listener(_ => source.Cancel()), source.Token));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Progress_comes_in_order_on_the_calling_thread_and_ends_before_the_result(int threads)
    {
        var reports = new List<StudyProgress>();
        int caller = Environment.CurrentManagedThreadId;
        Oscillator.Study(5000).Run(new StudyOptions { Threads = threads, Clock = new SteppingClock() }, new Listener(p =>
        {
            Assert.Equal(caller, Environment.CurrentManagedThreadId);
            reports.Add(p);
        }));
        Assert.Equal(reports.OrderBy(r => r.Done), reports);
        Assert.Equal(1, reports.Count(r => r.Done == 5000));
        Assert.Equal(Duration.Zero.Seconds, reports[^1].Remaining.Seconds);
        Assert.InRange(reports.Count, 100, 200);
        // The clock steps by a second a reading: after r reports, r seconds have gone.
        StudyProgress tenth = reports[9];
        Assert.Equal(10.0 * (5000 - tenth.Done) / tenth.Done, tenth.Remaining.Seconds, 1e-9);
    }

    [Fact]
    public void Numbers_of_the_measures_are_those_of_their_columns()
    {
        ReliabilityRun run = (Oscillator.Study() with { KeepCases = true }).Run();
        NumberColumn column = run.Columns().Measures[1];
        double[] present = [.. Enumerable.Range(0, 1000).Select(column.At).OfType<double>().Order()];
        MeasureSummary summary = run.Measure("slow period");
        Assert.Equal(run.Outcomes["Slow"], present.Length);
        Assert.Equal(present.Length, summary.Count);
        Assert.Equal(present.Average(), summary.Mean!.Value, 1e-12);
        Assert.Equal(Math.Sqrt(present.Sum(x => Math.Pow(x - present.Average(), 2)) / (present.Length - 1)), summary.StandardDeviation!.Value, 1e-12);
        Assert.Equal((present[0], present[^1]), (summary.Min!.Value, summary.Max!.Value));
        foreach (double percent in new[] { 1.0, 50, 97.5 })
        {
            double exact = present[(int)Math.Ceiling(percent / 100 * present.Length) - 1];
            Assert.Equal(exact, summary.Percentile(percent).Value, exact / 1024);
            Assert.True(summary.Percentile(percent).Interval.Holds(exact));
        }

        Assert.False(summary.Percentile(0.01).IntervalIsFull);
    }

    [Fact]
    public void Memory_does_not_grow_with_the_number_of_cases()
    {
        // What a study keeps is its tally: exact sums of a fixed size, and bins, of which a measure within a factor of 30 has at most 5 x 1024.
        int few = Oscillator.Study(20_000).Run().Tally.Measures.Sum(m => m.Bins.Bins);
        ReliabilityRun many = Oscillator.Study(400_000).Run();
        Assert.True(many.Measure("period").Max / many.Measure("period").Min < 30);
        Assert.All(many.Tally.Measures, m => Assert.InRange(m.Bins.Bins, 1, 5 * 1024));
        Assert.True(many.Tally.Measures.Sum(m => m.Bins.Bins) < 2 * few);
        Assert.Null(many.Tally.Columns);
        Assert.Throws<InvalidOperationException>(() => many.Columns());
    }

    [Fact]
    public void A_unit_with_a_comma_is_quoted_in_the_head_of_a_table()
    {
        using var writer = new StringWriter();
        (Oscillator.Study(2) with { KeepCases = true, Measures = [new Measure<double>("period", "s, at \"rest\"", p => p)] }).Run().Columns().WriteCsv(writer);
        Assert.Equal("case,outcome,mass [kg],spring.stiffness [N/m],\"period [s, at \"\"rest\"\"]\"", writer.ToString().Split('\n')[0]);
    }

    [Fact]
    public void A_percentile_that_falls_on_a_case_is_that_case()
    {
        // 0.07 x 100 is 7.000000000000001 in doubles; the seventh of a hundred is meant, not the eighth.
        var study = new ReliabilityStudy<double, double>
        {
            Inputs = new(0.0, new StudyInput<double>("u", "-", Distribution.Uniform(0, 1), (_, v) => v)),
            Design = DesignKind.LatinHypercube,
            Model = (u, _) => Math.Ceiling(100 * u),
            Outcome = _ => "done",
            Measures = [new Measure<double>("number", "-", n => n)],
            Cases = 100,
        };
        ReliabilityRun run = study.Run();
        for (int percent = 1; percent < 100; percent++)
            Assert.Equal(percent, run.Measure("number").Percentile(percent).Value, percent / 1024.0);
    }

    [Fact]
    public void Columns_are_written_with_units_and_read_back_to_the_same_bits()
    {
        CaseColumns columns = (Oscillator.Study(50) with { KeepCases = true }).Run().Columns();
        using var writer = new StringWriter();
        columns.WriteCsv(writer);
        string[] lines = writer.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("case,outcome,mass [kg],spring.stiffness [N/m],period [s],slow period [s]", lines[0]);
        Assert.Equal(51, lines.Length);
        string[] cells = lines[8].Split(',');
        Assert.Equal("7", cells[0]);
        Assert.Equal(columns.Inputs[1].At(7), double.Parse(cells[3], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(columns.Measures[1].At(7) is null, cells[5].Length == 0);
    }

    internal static string Text(ReliabilityRun run)
    {
        using var writer = new StringWriter();
        run.Write(writer);
        return writer.ToString();
    }

    private static string Everything(ReliabilityRun run)
    {
        using var writer = new StringWriter();
        run.Write(writer);
        run.Columns().WriteCsv(writer);
        return writer.ToString() + string.Join("|", run.Measures);
    }

    private static ReliabilityRun Read(string text) => ReliabilityRun.Read(new StringReader(text));

    private static string Code(Action act) => Assert.Single(Assert.Throws<InvalidModelException>(act).Findings).Code;

    private sealed class SteppingClock : TimeProvider
    {
        private long seconds;

        public override long TimestampFrequency => 1;

        public override long GetTimestamp() => seconds++;
    }
}
