using System.Text.Json;
using Json.Schema;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.GroundTests;
using Staging.Core.Plans;
using Staging.Core.Plans.Codecs;
using Staging.Core.Studies;
using Staging.Core.Tests.Hygiene.Sources;
using Staging.Core.Tests.Plans;
using UnitsNet;
using Duration = UnitsNet.Duration;

namespace Staging.Core.Tests.GroundTests;

/// <summary>A series as text: in the terms of a plan, as strict, with all problems at once, and the schema beside it.</summary>
public class GroundTestTextTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(GroundTestSeries.Schema);

    [Fact]
    public void The_published_schema_is_current() => Published.AssertCurrent("docs/schema/ground-tests.schema.json", GroundTestSeries.Schema);

    [Fact]
    public void The_published_list_of_keys_is_current() =>
        Published.AssertCurrent("docs/guides/ground-test-keys.md", KeyPage.OfTests(GroundTestSeries.Schema, StagingPlan.Schema));

    [Fact]
    public void Ten_tests_are_read_from_a_file_with_the_trace_beside_it()
    {
        GroundTestSeries series = GroundTestSeries.Read(TenTests.File);
        Assert.Equal(10, series.Tests.Length);
        Assert.Equal(ModelDiscrepancy.Judged, series.Discrepancy);
        GroundTest gauged = series.Tests[3];
        Assert.Equal(("gauge_Pa", 40, 2000), (gauged.Pressure!.Name, gauged.Pressure.Times.Length, gauged.GaugeError.Pascals));
        Assert.Equal((Seen.PartedFirst, 14, 2), (series.Tests[1].Seen, series.Tests[1].Parted!.At.Milliseconds, series.Tests[1].Parted!.Within.Milliseconds));
        Assert.Equal(40, series.Tests[7].Gap.Design.Joint.Coupler.BreakawayForce.Newtons);
        Assert.Equal(0.1, series.Tests[9].Doubt);
        Assert.Empty(series.Tests[9].Gap.Design.Vents);
        Assert.Equal(100_000, series.Tests[0].Gap.Bodies.MassBehind.Kilograms);
        Assert.DoesNotContain(series.Check(), f => f.Severity == FindingSeverity.Error);
    }

    /// <summary>A text that said nothing of the gas would be read as another series, and parts of the two would go together.</summary>
    [Fact]
    public void What_surrounds_a_gap_is_dry_air_or_has_no_words_and_tells_parts_apart()
    {
        GroundTestSeries one = In(PerfectGas.DryAir with { HeatCapacityRatio = 1.3 }), two = In(PerfectGas.DryAir with { HeatCapacityRatio = 1.35 });
        Assert.Contains("words for dry air only", Assert.Throws<ArgumentException>(one.ToJson).Message, StringComparison.Ordinal);
        string[] digests = [one.Digest, two.Digest, In(PerfectGas.DryAir).Digest, In(PerfectGas.DryAir with { HeatCapacityRatio = 1.3 }).Digest];
        Assert.All(digests, d => Assert.StartsWith(", tests ", d, StringComparison.Ordinal));
        Assert.Equal(3, digests.Distinct().Count());
        Assert.Equal(digests[0], digests[3]);

        static GroundTestSeries In(PerfectGas gas)
        {
            GroundTest first = TenTests.Series.Tests[0];
            return new GroundTestSeries { Tests = [first with { Gap = first.Gap with { Surroundings = first.Gap.Surroundings with { Gas = gas } } }] };
        }
    }

    [Fact]
    public void What_is_written_reads_to_an_equal_series()
    {
        GroundTestSeries series = TenTests.Series with { Discrepancy = new ModelDiscrepancy { WrongOutcome = 0.2, PressureMemory = Duration.FromMilliseconds(3) } };
        series = series with
        {
            Tests = [.. series.Tests, series.Tests[0] with { Name = "one more", Model = new GapModel.WellStirred(), Gap = series.Tests[0].Gap with { Horizon = Duration.FromSeconds(0.4) } }],
        };
        string text = series.ToJson();
        Assert.Equal(series, GroundTestSeries.Parse(text));
        Assert.Equal(text, GroundTestSeries.Parse(text).ToJson());
        Assert.True(IsValid(text));
        Assert.True(IsValid(TenTests.Text));
        Assert.True(IsValid("""{ "tests": [] }"""));
        Assert.Empty(GroundTestSeries.Parse("""{ "tests": [] }""").Tests);
    }

    [Theory]
    [InlineData("\"seen\": \"lit\"", "\"seen\": \"burnt\"", "$.tests[0].seen", "'burnt' is not a known word here; accepted: unknown, lit, notLit, partedFirst, notLitTogether.", true)]
    [InlineData("\"seen\"", "\"seem\"", "$.tests[0].seem", "did you mean 'seen', which is missing?", true)]
    [InlineData("\"60 g\"", "60", "$.tests[0].bodies.massAhead", "the number 60 has no unit", true)]
    [InlineData("{ \"at\": \"14 ms\", \"within\": \"2 ms\" }", "{ \"at\": \"14 ms\" }", "$.tests[1].parted.within", "the key is missing", true)]
    [InlineData("{ \"at\": \"14 ms\"", "{ \"at\": \"14 s\"", "$.tests[1].parted.at", "14 s is outside the range; it must be above 0 and at most 10 s.", false)]
    [InlineData("\"doubt\": 0.1", "\"doubt\": 1", "$.tests[9].doubt", "1 is outside the range; it must be between 0 and 0.99", true)]
    [InlineData("\"testsVersion\": 1", "\"testsVersion\": 2", "$.testsVersion", "the series of ground tests is of version 2", true)]
    [InlineData("\"60 mm one 6 mm hole\"", "\"60 mm, one\"", "$.tests[0].name", "may hold only letters", false)]
    [InlineData("\"station\": \"56 mm\"", "\"station\": \"70 mm\"", "$.tests[0].gap.design.vents[0].station", "GAP001: 70 mm lies outside the tube", false)]
    [InlineData("\"6 mm\"", "\"60 mm\"", "$.tests[0].gap.design.vents[0]", "GAP", false)]
    [InlineData("\"gauge.csv\"", "\"gauge-2.csv\"", "$.tests[3].pressure", "there is no such file", false)]
    [InlineData("\"gauge.csv\"", "\"../gauge.csv\"", "$.tests[3].pressure", "is not accepted as a file name", false)]
    [InlineData("\"seen\": \"partedFirst\",\n      \"parted\"", "\"seen\": \"notLitTogether\",\n      \"parted\"", "$.tests[1].parted", "TST001: The test has a time at which the stages parted, but was seen as \"notLitTogether\"", false)]
    [InlineData("\"name\": \"250 mm closed\"", "\"name\": \"60 mm one 6 mm hole\"", "$.tests[9].name", "TST006: Another test is called", false)]
    public void A_bad_record_is_told_by_path_and_reason(string passage, string instead, string path, string words, bool bySchemaToo)
    {
        IReadOnlyList<PlanProblem> problems = TenTests.ProblemsWith(passage, instead);
        Assert.Contains(problems, p => p.JsonPath.StartsWith(path, StringComparison.Ordinal) && p.Message.Contains(words, StringComparison.Ordinal));
        int at = TenTests.Text.IndexOf(passage, StringComparison.Ordinal);
        Assert.Equal(!bySchemaToo, IsValid(TenTests.Text[..at] + instead + TenTests.Text[(at + passage.Length)..]));
    }

    /// <summary>The record that the page shows is one.</summary>
    [Fact]
    public void The_example_of_the_page_is_read()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "studies", "ground-tests.md")).ReplaceLineEndings("\n");
        string example = page.Split("<!-- ground-tests: record -->\n```json\n")[1].Split("```")[0];
        GroundTest test = Assert.Single(GroundTestSeries.Parse(example).Tests);
        Assert.Equal(Seen.PartedFirst, test.Seen);
        Assert.Equal(TenTests.Series.Tests[1].Gap.Design, test.Gap.Design);
        Assert.True(IsValid(example));
        Assert.Equal(0.2, test.Gap.Horizon.Seconds, 0.05);
    }

    [Fact]
    public void All_problems_of_all_tests_are_told_at_once()
    {
        string text = TenTests.Text.Replace("\"bodies\": { \"massAhead\": \"60 g\"", "\"bodies\": { \"massAhead\": \"60 kPa\"", StringComparison.Ordinal);
        var refusal = Assert.Throws<PlanFormatException>(() => TenTests.Parse(text.Replace("\"250 mm\"", "\"250 m\"", StringComparison.Ordinal)));
        Assert.Equal(10, refusal.Problems.Count(p => p.JsonPath.EndsWith("massAhead", StringComparison.Ordinal)));
        Assert.Equal(5, refusal.Problems.Count(p => p.JsonPath.EndsWith("length", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_trace_of_another_unit_or_shape_is_refused_by_its_name()
    {
        PlanProblem Of(string csv) => Assert.Single(Assert.Throws<PlanFormatException>(() => GroundTestSeries.Parse(TenTests.Text, _ => new StringReader(csv))).Problems);
        PlanProblem unit = Of("time_s,gauge_psi\n0.001,3\n0.002,4\n");
        Assert.Equal("$.tests[3].pressure", unit.JsonPath);
        Assert.StartsWith("TST003: The trace is named 'gauge_psi'; a gap pressure above that of the air in pascals is wanted, named gauge_Pa.", unit.Message, StringComparison.Ordinal);
        Assert.StartsWith("gauge.csv: Line 1 of the trace has to be the head", Of("t,p\n").Message, StringComparison.Ordinal);
        Assert.StartsWith("gauge.csv: Row 2: time 0.001 s", Of("time_s,gauge_Pa\n0.001,3\n0.001,4\n").Message, StringComparison.Ordinal);
        Assert.StartsWith("'gauge.csv' is a file, and no files come with this text", Assert.Single(Assert.Throws<PlanFormatException>(() => GroundTestSeries.Parse(TenTests.Text)).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Records_that_contradict_themselves_are_errors()
    {
        GroundTest lit = new() { Name = "x", Gap = CheapGap.Of(120), Seen = Seen.Lit, Lit = At(20, 1) };
        Assert.Empty(Errors(lit));
        Assert.Equal(["TST001 Lit"], Errors(lit with { Seen = Seen.PartedFirst }));
        Assert.Equal(["TST001 Lit"], Errors(lit with { Seen = Seen.Unknown }));
        Assert.Equal(["TST001 Parted"], Errors(lit with { Parted = At(10, 1) }));
        Assert.Empty(Errors(lit with { Parted = At(19, 1) })); // within three standard errors
        Assert.Empty(Errors(lit with { Parted = At(10, 1), Gap = lit.Gap with { AfterOpening = Duration.FromMilliseconds(10) } }));
        Assert.Equal(["TST002 JointMoves"], Errors(lit with { Seen = Seen.PartedFirst, Lit = null, Parted = At(10, 1), JointMoves = At(15, 1) }));
        Assert.Equal(["TST003 Pressure"], Errors(lit with { Pressure = MeasuredTrace.Of("gauge_kPa", [0, 0.1], [0, 0]) }));
        Assert.Equal(["TST004 Lit"], Errors(lit with { Lit = At(250, 1) }));
        Assert.Equal(["TST004 Pressure"], Errors(lit with { Pressure = MeasuredTrace.Of("gauge_Pa", [0, 0.3], [0, 0]) }));
        Assert.Equal(["TST005 Gap.DynamicPressure"], Errors(lit with { Gap = lit.Gap with { DynamicPressure = Pressure.FromPascals(100) } }));
        Assert.Throws<ArgumentException>("Name", () => lit with { Name = "a, b" });
        Assert.Throws<ArgumentOutOfRangeException>("Doubt", () => lit with { Doubt = 1 });
        Assert.Throws<ArgumentOutOfRangeException>("At", () => At(0, 1));
        Assert.Throws<ArgumentOutOfRangeException>("WrongOutcome", () => new ModelDiscrepancy { WrongOutcome = 0.7 });
        Assert.Throws<ArgumentOutOfRangeException>("Seen", () => lit with { Seen = (Seen)9 });
    }

    [Fact]
    public void Every_required_property_of_a_record_is_a_key()
    {
        IRecordCodec[] records = [GroundTestCodecs.Record, GroundTestCodecs.Time, GroundTestCodecs.Discrepancy, GroundTestCodecs.Series];
        Assert.Empty(from record in records
                     from property in record.Record.GetProperties()
                     where property.CustomAttributes.Any(a => a.AttributeType.Name == "RequiredMemberAttribute")
                     where !record.Facts.Any(f => f.Required && f.Property == property.Name)
                     select $"{record.Record.Name}.{property.Name}");
        Assert.All(records.SelectMany(r => r.Facts).Where(f => f.BaseUnit is not null && f.Key is not ("horizon" or "afterOpening" or "testsVersion")), f => Assert.NotNull(f.Range));
    }

    private static string[] Errors(GroundTest test) =>
        [.. test.Check().Where(f => f.Severity == FindingSeverity.Error).Select(f => $"{f.Code} {f.Path}")];

    private static TimeSeen At(double ms, double within_ms) => new() { At = Duration.FromMilliseconds(ms), Within = Duration.FromMilliseconds(within_ms) };

    private static bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
