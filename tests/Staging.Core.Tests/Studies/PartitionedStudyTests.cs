using System.Collections.Immutable;
using System.Globalization;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

/// <summary>Every study that evaluates a design: in parts, on any number of threads, through text, the bits of the whole.</summary>
public class PartitionedStudyTests
{
    private static readonly InputSet<ImmutableArray<double>> Cube = new InputSet<ImmutableArray<double>>(
        [0, 0, 0], [.. Enumerable.Range(0, 3).Select(d => new StudyInput<ImmutableArray<double>>($"x{d + 1}", "kg_m2", Distribution.Normal(d, 1), (x, v) => x.SetItem(d, v)))]);

    private static readonly SensitivityStudy<ImmutableArray<double>> Study =
        new() { Inputs = Cube, Unit = "W/(m K)", Model = (x, _) => Math.Sin(x[0]) + 7 * x[1] * x[1] / 3 + x[2] * x[0] };

    private static readonly Axis Short = Axis.Even("gap", "mm", 0.1, 1, 11), Long = Axis.Factors("area", "mm2", 0.3, 30, 13);

    private static readonly PartCodec<Found> FoundForm = new PartCodec<Found>(
        v => new Found(v[0] == 1, v[1]), new Measure<Found>("lit", "-", f => f.Lit ? 1 : 0), new Measure<Found>("time", "ms", f => f.Time));

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Parts_merge_to_the_bits_of_the_whole(int parts)
    {
        Same(parts, Study.ScreenInParts(10, seed: 3), Study.Screen(10, seed: 3), Each);
        Same(parts, Study.VarianceSharesInParts(8, repetitions: 5, seed: 9), Study.VarianceShares(8, repetitions: 5, seed: 9), Each);
        Same(parts, Study.BarsInParts(0.1), Study.Bars(0.1), Each);
        Same(parts, Sweep.AlongInParts(Long, (a, _) => Math.Sin(a), Sweep.Number("sine", "-")), Sweep.Along(Long, (a, _) => Math.Sin(a)), line => Each(line.Results));
        Same(parts, Sweep.OverInParts(Short, Long, (g, a, _) => Found.At(g, a), FoundForm), Sweep.Over(Short, Long, (g, a, _) => Found.At(g, a)), map => Each(map.Results));
        Same(parts, Sweep.AlongInParts(Short, Windows, Sweep.WindowCodec(Long)), Sweep.Along(Short, Windows), line => line.Results.SelectMany(Edges));
    }

    [Fact]
    public void Parts_merge_in_steps_and_some_may_be_empty()
    {
        PartitionedStudy<SweepLine<double>> study = Sweep.AlongInParts(Axis.Even("x", "-", 0, 1, 5), (x, _) => x / 3, Sweep.Number("third", "-"));
        PartResult[] parts = [.. Enumerable.Range(1, 7).Select(k => Read(Text(Part(study, k, 7))))];
        Assert.Contains(0, parts.Select(p => p.Cases));
        PartResult odd = PartResult.Merge([.. parts.Where((_, i) => i % 2 == 0)]), even = PartResult.Merge([.. parts.Where((_, i) => i % 2 == 1)]);
        Assert.False(odd.IsWhole || even.IsWhole);
        Assert.Equal(("1 to 2, 4", "0, 3", ""), (even.Missing, odd.Missing, PartResult.Merge(odd, even).Missing));
        Assert.Equal(Text(study.Run()), Text(PartResult.Merge(even, odd)));
    }

    [Fact]
    public void A_part_runs_its_own_points_and_keeps_no_other()
    {
        int calls = 0;
        PartitionedStudy<SweepMap<double>> study = Sweep.OverInParts(Short, Long, (g, a, _) => Interlocked.Increment(ref calls), Sweep.Number("call", "-"));
        var reports = new List<StudyProgress>();
        PartResult part = study.Run(new StudyOptions { Part = new StudyPart(2, 7) }, new Listener(reports.Add));
        // 143 points: the second seventh is 20 to 39.
        Assert.Equal((20, 20, 143), (calls, part.Rows.Length, part.CasesAsked));
        Assert.Equal((20, 20), (reports[^1].Done, reports[^1].Total));
        calls = 0;
        SensitivityStudy<ImmutableArray<double>> counted = Study with { Model = (x, _) => Interlocked.Increment(ref calls) };
        Part(counted.ScreenInParts(10), 2, 5);
        Assert.Equal(2 * 4, calls);
        calls = 0;
        Part(counted.VarianceSharesInParts(8, repetitions: 5), 2, 5);
        Assert.Equal(8 * 5, calls);
    }

    [Fact]
    public void A_map_too_large_for_one_machine_runs_in_parts()
    {
        Axis long1 = Axis.Even("x", "-", 0, 1, 100_000), long2 = Axis.Even("y", "-", 0, 1, 100_000);
        PartitionedStudy<SweepMap<double>> study = Sweep.OverInParts(long1, long2, (x, y, _) => x + y, Sweep.Number("sum", "-"));
        Assert.Equal(10_000_000_000, study.Cases);
        PartResult last = Part(study, 1_000_000, 1_000_000);
        Assert.Equal((10_000, 2.0), (last.Cases, last.Rows[^1][0]));
        Assert.Equal("STU016", Assert.Throws<InvalidModelException>(() => study.Run()).Findings[0].Code);
    }

    [Fact]
    public void Every_number_survives_the_text_bit_by_bit()
    {
        double?[] hard = [0, -0.0, double.Epsilon, -double.MaxValue, 1 / 3.0, 0.1 + 0.2, null, 1e22, 123456789012345680, Math.BitDecrement(1)];
        PartCodec<double?> form = new PartCodec<double?>(v => v[0], new Measure<double?>("value", "%_\\ of all", x => x));
        PartitionedStudy<SweepLine<double?>> study = Sweep.AlongInParts(Axis.Even("n", "-", 0, hard.Length - 1, hard.Length), (n, _) => hard[(int)Math.Round(n)], form);
        PartResult run = study.Run(), home = Read(Text(run));
        static long Bits(double? x) => x is { } value ? BitConverter.DoubleToInt64Bits(value) : -1;
        Assert.Equal(hard.Select(Bits), study.Of(home).Results.Select(Bits));
        Assert.Equal(Text(run), Text(home));
    }

    [Fact]
    public void The_text_of_a_part_is_the_one_that_the_page_shows()
    {
        PartResult part = Part(Sweep.AlongInParts(Axis.Even("gap", "mm", 40, 340, 4), (mm, _) => mm / 3, Sweep.Number("third", "mm")), 2, 2);
        Assert.Contains($"```text\n{Text(part)}```", File.ReadAllText(Path.Combine(Hygiene.Sources.Repository.Root, "docs", "studies", "index.md")), StringComparison.Ordinal);
        Assert.Equal("2 of 4 cases: sweep along gap [mm] from 40 to 340 in 4 values by steps", part.ToString());
    }

    [Fact]
    public void The_text_does_not_depend_on_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            string here = Text(Study.BarsInParts(0.1).Run());
            CultureInfo.CurrentCulture = WithCommas();
            Assert.Equal(here, Text(Read(Text(Study.BarsInParts(0.1).Run()))));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static CultureInfo WithCommas()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (culture.NumberFormat.NumberDecimalSeparator, culture.NumberFormat.NegativeSign) = (",", "~");
        return culture;
    }

    [Theory]
    [InlineData("staging study points", "staging study part", "Line 1 of the study part: \"staging study points, form 2\" belongs here")]
    [InlineData("cases 5", "cases five", "Line 2 of the study part: the number of cases has to be a whole number, 0 or more, not \"five\"")]
    [InlineData("cases 5", "cases 0", "one case or more")]
    [InlineData("cases 5\n", "", "Line 2 of the study part: \"cases\" belongs here, not \"seed 0\"")]
    [InlineData("seed 0", "seed -1", "Line 3 of the study part: the seed")]
    [InlineData("design", "plan", "Line 4")]
    [InlineData("input 1 - x", "input 1 -", "Line 6 of the study part: a unit and a name belong here")]
    [InlineData("measure 1 - third", "measure 1 - th,ird", "may hold only letters")]
    [InlineData("range 1 3", "range 3 1", "Line 10 of the study part: there is no range from 3 to 1 of 5 cases")]
    [InlineData("range 1 3", "range 1 6", "no range from 1 to 6")]
    [InlineData("range 1 3", "range 1 3\nrange 2 4", "Line 11 of the study part: case 2 is in two ranges")]
    [InlineData("range 1 3", "range 1 2", "Line 12 of the study part: \"checksum\" belongs here, not \"case 2")]
    [InlineData("range 1 3", "range 1 4", "\"case 3\" belongs here, not \"checksum ")]
    [InlineData("case 1 0.25", "case 1 0,25", "Line 11 of the study part: third has to be a finite number, not \"0,25\"")]
    [InlineData("case 1 0.25", "case 1 NaN", "not \"NaN\"")]
    [InlineData("case 1 0.25", "case 1 1e999", "not \"1e999\"")]
    [InlineData("case 1 0.25", "case 1 0.25 1", "1 numbers belong here, one for each measure, not 2")]
    [InlineData("case 1 0.25\n", "", "\"case 1\" belongs here, not \"case 2 0.5\"")]
    [InlineData("end\n", "", "\"end\" belongs here, but the text is over")]
    [InlineData("end\n", "end\ncase 3 1\n", "nothing may follow the end")]
    public void A_text_that_is_damaged_is_no_part(string line, string other, string says)
    {
        string text = Text(Part(Sweep.AlongInParts(Axis.Even("x", "-", 0, 1, 5), (x, _) => x, Sweep.Number("third", "-")), 2, 3));
        Assert.Contains(line, text, StringComparison.Ordinal);
        Assert.Contains(says, Assert.Throws<FormatException>(() => Read(text.Replace(line, other, StringComparison.Ordinal))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_that_do_not_belong_together_are_refused_by_name()
    {
        PartResult first = Part(Study.ScreenInParts(10), 1, 3), last = Part(Study.ScreenInParts(10), 3, 3);
        Assert.Contains("number 2 have seeds 0 and 7", Refusal(() => PartResult.Merge(first, Part(Study.ScreenInParts(10, seed: 7), 2, 3))), StringComparison.Ordinal);
        Assert.Contains("10 and 11 cases", Refusal(() => PartResult.Merge(first, Part(Study.ScreenInParts(11), 2, 3))), StringComparison.Ordinal);
        Assert.Contains("\"screening on 8 levels\" and \"screening on 6 levels\"", Refusal(() => PartResult.Merge(first, Part(Study.ScreenInParts(10, levels: 6), 2, 3))), StringComparison.Ordinal);
        Assert.Contains("measures x1 [W/(m K)]", Refusal(() => PartResult.Merge(first, Part((Study with { Unit = "K" }).ScreenInParts(10), 2, 3))), StringComparison.Ordinal);
        Assert.Contains("Case 0 is in two of the parts", Refusal(() => PartResult.Merge(first, last, first)), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("parts", () => PartResult.Merge(first, first));
        Assert.Contains("Part 1 is null", Assert.Throws<ArgumentException>("parts", () => PartResult.Merge(null!, null!)).Message, StringComparison.Ordinal);
        Assert.Contains("no part to merge", Refusal(() => PartResult.Merge()), StringComparison.Ordinal);
        Assert.Contains("cases 0 to 9 these are missing: 3 to 5.", Refusal(() => Study.ScreenInParts(10).Of(PartResult.Merge(last, first))), StringComparison.Ordinal);
        Assert.Contains("\"tornado with tails of 0.05\" and \"screening on 8 levels\"", Refusal(() => Study.BarsInParts().Of(Study.ScreenInParts(13).Run())), StringComparison.Ordinal);
        Assert.Contains("from 0.1 to 1 in 11", Refusal(() => Sweep.AlongInParts(Short, Windows, Sweep.WindowCodec(Long)).Of(
            Sweep.AlongInParts(Axis.Even("gap", "mm", 0.1, 2, 11), Windows, Sweep.WindowCodec(Long)).Run())), StringComparison.Ordinal);
        Assert.Contains("in 13 values", Refusal(() => Sweep.AlongInParts(Short, Windows, Sweep.WindowCodec(Long with { })).Of(
            Sweep.AlongInParts(Short, (_, _) => Find(Short, 0.5), Sweep.WindowCodec(Short)).Run())), StringComparison.Ordinal);
    }

    [Fact]
    public void An_answer_is_not_asked_of_a_part()
    {
        var part = new StudyOptions { Part = new StudyPart(1, 2) };
        Action[] asked = [() => Study.Screen(10, options: part), () => Study.VarianceShares(8, options: part), () => Study.Bars(options: part), () => Sweep.Along(Short, (x, _) => x, part)];
        Assert.All(asked, ask => Assert.Equal("STU007", Assert.Throws<InvalidModelException>(ask).Findings[0].Code));
    }

    [Fact]
    public void What_would_not_come_back_is_refused()
    {
        Assert.Contains("\"x\" of case 3 is not", Assert.Throws<ArithmeticException>(() => Sweep.AlongInParts(Short, (x, _) => x < 0.3 ? x : double.NaN, Sweep.Number("x", "-")).Run()).Message, StringComparison.Ordinal);
        Assert.Contains("\"x\" of case 0", Assert.Throws<ArithmeticException>(() => Sweep.AlongInParts(Short, (_, _) => double.PositiveInfinity, Sweep.Number("x", "-")).Run()).Message, StringComparison.Ordinal);
        Assert.Contains("searched on gap", Refusal(() => Sweep.AlongInParts(Short, (_, _) => Find(Short, 0.5), Sweep.WindowCodec(Long)).Run()), StringComparison.Ordinal);
        Assert.Equal("STU001", Assert.Throws<InvalidModelException>(() => new PartCodec<Found>(_ => Found.At(1, 1))).Findings[0].Code);
        Assert.Equal("STU002", Assert.Throws<InvalidModelException>(() => new PartCodec<double>(v => v[0]!.Value, new Measure<double>("a", "-", x => x), new Measure<double>("a", "-", x => x))).Findings[0].Code);
        PartitionedStudy<ImmutableArray<TornadoBar>> bars = Study.BarsInParts();
        string gone = Text(bars.Run()).Replace("case 0 2.3", "case 0 -\nlost 2.3", StringComparison.Ordinal);
        gone = string.Join("\n", gone.Split('\n').Where(line => !line.StartsWith("lost", StringComparison.Ordinal)));
        Assert.Contains("Measure \"result\" of case 0 is not a finite number", Refusal(() => bars.Of(Read(Signed.Again(gone)))), StringComparison.Ordinal);
        PartitionedStudy<SweepLine<double>> number = Sweep.AlongInParts(Short, (x, _) => x, Sweep.Number("x", "-"));
        Assert.Contains("\"x\" is absent", Refusal(() => number.Of(Read(Signed.Again(Text(number.Run()).Replace("case 0 0.1", "case 0 -", StringComparison.Ordinal))))), StringComparison.Ordinal);
        PartitionedStudy<SweepLine<WindowResult>> windows = Sweep.AlongInParts(Short, (_, _) => Find(Short, 0.9), Sweep.WindowCodec(Short));
        string torn = Text(windows.Run()).Replace("case 0 0", "case 0 1", StringComparison.Ordinal);
        Assert.Contains("Values 1 and 2 of the axis differ", Refusal(() => windows.Of(Read(Signed.Again(torn)))), StringComparison.Ordinal);
    }

    private static void Same<TAnswer>(int parts, PartitionedStudy<TAnswer> study, TAnswer whole, Func<TAnswer, IEnumerable<object>> each)
    {
        PartResult[] home = [.. Enumerable.Range(1, parts).Reverse().Select(k => Read(Text(Part(study, k, parts))))];
        PartResult merged = PartResult.Merge([.. home]);
        Assert.True(merged.IsWhole);
        Assert.Equal(parts == 1, home[0].IsWhole);
        foreach (int threads in new[] { 1, 2, 8 })
            Assert.Equal(Text(study.Run(new StudyOptions { Threads = threads })), Text(merged));
        Assert.Equal(each(whole), each(study.Of(merged)));
    }

    private static PartResult Part<TAnswer>(PartitionedStudy<TAnswer> study, int part, int parts) =>
        study.Run(new StudyOptions { Part = new StudyPart(part, parts), Threads = part % 3 + 1 });

    private static IEnumerable<object> Each<T>(ImmutableArray<T> values) => values.Select(value => Numbers(value!));

    private static object Numbers(object result) => result switch
    {
        MorrisEffect e => (e.Input.ToString(), e.Mean, e.MeanAbsolute, e.StandardDeviation, e.MeanAbsoluteInterval.Low, e.MeanAbsoluteInterval.High),
        SobolIndex s => (s.Input.ToString(), s.First, s.FirstInterval.Low, s.FirstInterval.High, s.Total, s.TotalInterval.Low, s.TotalInterval.High),
        TornadoBar b => (b.Input.ToString(), b.Low, b.High, b.AtLow, b.AtCentre, b.AtHigh, b.Slope),
        _ => result,
    };

    private static WindowResult Windows(double gap, CancellationToken stop) => Find(Long, gap);

    /// <summary>No window, one at an end of the axis, or several, by the gap.</summary>
    private static WindowResult Find(Axis axis, double gap) => Sweep.Windows(axis, 1e-6, (a, _) => Math.Sin(a * gap * 2) > 2 * gap - 1, new StudyOptions { Threads = 1 });

    private static IEnumerable<object> Edges(WindowResult result) =>
        [result.Axis.ToString(), .. Each(result.Scan), .. Each([.. result.Windows.Select(w => (w.Low, w.LowIsEndOfSearch, w.High, w.HighIsEndOfSearch))])];

    private static string Text(PartResult run)
    {
        using var writer = new StringWriter();
        run.Write(writer);
        return writer.ToString();
    }

    private static PartResult Read(string text) => PartResult.Read(new StringReader(text));

    private static string Refusal(Action act) => Assert.Throws<ArgumentException>(act).Message;

    /// <summary>What a user keeps of a run: whether, and when if so.</summary>
    private sealed record Found(bool Lit, double? Time)
    {
        public static Found At(double gap, double area) => gap * area > 3 ? new Found(true, 1 / gap + area) : new Found(false, null);
    }
}
