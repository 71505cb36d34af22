using System.Text.Json.Nodes;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;

namespace Staging.Core.Tests.Plans;

/// <summary>The short form of a plan: quantities as texts, starting sets, defaults.</summary>
public class ShortPlanTests
{
    [Fact]
    public void The_demo_fits_on_one_screen_and_reads_to_the_plan_of_the_long_text()
    {
        Assert.True(DemoPlan.Short.Split('\n').Length <= 56, "more than 55 lines");
        Assert.Equal(DemoPlan.Parse(DemoPlan.Text), DemoPlan.Parse(DemoPlan.Short));
    }

    [Fact]
    public void Both_written_forms_read_to_the_plan_they_were_written_from()
    {
        StagingPlan plan = DemoPlan.Plan;
        string whole = plan.ToJson(), brief = plan.ToJson(PlanForm.Brief);
        Assert.Equal(plan, StagingPlan.Parse(whole));
        Assert.Equal(plan, StagingPlan.Parse(brief));
        Assert.Contains("\"startFrom\": \"bore18mm\"", brief, StringComparison.Ordinal);
        Assert.DoesNotContain("startFrom", whole, StringComparison.Ordinal);
        Assert.True(brief.Split('\n').Length < 0.5 * whole.Split('\n').Length, brief);
        Assert.All(brief.Split('\n').Where(l => !l.Contains("invented: ", StringComparison.Ordinal)), l => Assert.True(l.Length <= 100, l));
    }

    [Theory]
    [InlineData("\"18mm\"", 18)]
    [InlineData("\"18 mm\"", 18)]
    [InlineData("\"1.8e1   mm\"", 18)]
    [InlineData("\"1.8 cm\"", 18)]
    [InlineData("{ \"value\": 18, \"unit\": \"mm\" }", 18)]
    public void A_length_is_a_text_or_an_object(string written, double millimetres) =>
        Assert.Equal(millimetres, GapOf(WithGap($$"""{ "startFrom": "bore18mm", "design": { "tube": { "bore": {{written}} } } }""")).Design.Tube.Bore.Millimeters, 1e-9);

    [Theory]
    [InlineData("\"18\"", "'18' has no unit; write \"18 mm\", with one of m, km, cm, mm, um, in, ft.")]
    [InlineData("\"18 furlong\"", "'18 furlong': 'furlong' is not an accepted unit of length; accepted: m, km, cm, mm, um, in, ft.")]
    [InlineData("\"18 g\"", "'18 g': 'g' is not an accepted unit of length")]
    [InlineData("\"18,5 mm\"", "'18,5 mm': ',5 mm' is not an accepted unit of length")]
    [InlineData("\"mm\"", "'mm' is not a number with its unit; wanted: a number and one of m, km, cm, mm, um, in, ft, for example \"1 m\".")]
    [InlineData("\"1e999 mm\"", "'1e999 mm' is too large a number.")]
    [InlineData("\"1800 mm\"", "1800 mm is outside the range; it must be between 2 and 200 mm.")]
    [InlineData("18", "the number 18 has no unit; write \"18 mm\", with one of m, km, cm, mm, um, in, ft.")]
    public void A_length_that_is_none_is_told_with_path_text_and_units(string written, string words)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(WithGap($$"""{ "startFrom": "bore18mm", "design": { "tube": { "bore": {{written}} } } }""")));
        Assert.Equal("$.flight.stages[1].ignition.gap.design.tube.bore", problem.JsonPath);
        Assert.StartsWith(words, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_gap_does_not_say_comes_from_its_starting_set()
    {
        GapIgnition gap = GapOf(WithGap("""
            { "startFrom": "bore18mm", "design": { "grain": { "conductivity": "0.5 W/(m K)" }, "mixingAndHeat": { "startFrom": "judged", "emissivity": 0.7 } } }
            """));
        GapDesign start = StartingGaps.Bore18mm.Design;
        Assert.Equal(start.Grain with { Conductivity = UnitsNet.ThermalConductivity.FromWattsPerMeterKelvin(0.5) }, gap.Design.Grain);
        Assert.Equal(start.MixingAndHeat with { Emissivity = 0.7 }, gap.Design.MixingAndHeat);
        Assert.Equal(start with { Grain = gap.Design.Grain, MixingAndHeat = gap.Design.MixingAndHeat }, gap.Design);
        Assert.Null(gap.Layout);
    }

    [Fact]
    public void An_object_of_another_kind_replaces_the_one_of_the_set()
    {
        GapIgnition gap = GapOf(WithGap("""
            { "startFrom": "bore18mm", "design": { "joint": {
                "kind": "taped", "coupler": { "startFrom": "bore18mm", "breakawayForce": "16 N" }, "tape": { "startFrom": "paperTape" } } } }
            """));
        Assert.Equal(JointTape.PaperTape, gap.Design.Joint.Tape);
        Assert.Equal(16, gap.Design.Joint.Coupler.BreakawayForce.Newtons);
        PlanProblem missing = Assert.Single(DemoPlan.ProblemsOf(WithGap(
            """{ "startFrom": "bore18mm", "design": { "joint": { "kind": "taped", "tape": { "startFrom": "paperTape" } } } }""")));
        Assert.Equal("$.flight.stages[1].ignition.gap.design.joint.coupler", missing.JsonPath);
    }

    [Fact]
    public void Lists_are_replaced_not_joined()
    {
        string twice = Own(
            """ "ours": { "startFrom": "bore18mm", "design": { "vents": [{ "station": "50 mm", "holes": { "diameter": "3 mm", "wallThickness": "0.5 mm", "count": 2 } }] } } """,
            """{ "startFrom": "ours", "design": { "vents": [] } }""");
        Assert.Empty(GapOf(twice).Design.Vents);
    }

    [Fact]
    public void Gaps_of_the_plan_come_before_those_of_the_library_and_start_from_one_another()
    {
        GapIgnition gap = GapOf(Own(
            """
            "bore18mm": { "startFrom": "wide", "holePressureCoefficient": -0.1 },
            "wide": { "startFrom": "base", "design": { "tube": { "bore": "24 mm" } } },
            "base": { "design": { "startFrom": "bore18mm" }, "holePressureCoefficient": 0.3 }
            """,
            """{ "startFrom": "bore18mm" }"""));
        Assert.Equal(24, gap.Design.Tube.Bore.Millimeters);
        Assert.Equal(120, gap.Design.Tube.Length.Millimeters);
        Assert.Equal(-0.1, gap.HolePressureCoefficient);
    }

    [Theory]
    [InlineData("\"a\": { \"startFrom\": \"b\" }, \"b\": { \"startFrom\": \"a\" }", "a", "$.gaps.b.startFrom", "the gap starts from itself: a, from b, from a.")]
    [InlineData("\"ours\": { \"startFrom\": \"bore18mm\" }", "bore81mm", "$.flight.stages[1].ignition.gap.startFrom", "'bore81mm' is not a known starting set here; did you mean 'bore18mm'? Accepted: ours, bore18mm.")]
    [InlineData("\"ours\": { \"startFrom\": \"nowhere\" }", "bore18mm", "$.gaps.ours.startFrom", "'nowhere' is not a known starting set here; accepted: ours, bore18mm.")]
    [InlineData("\"ours\": { \"startFrom\": \"bore18mm\", \"desing\": {} }", "bore18mm", "$.gaps.ours.desing", "'desing' is not a known key here; did you mean 'design'?")]
    [InlineData("\"ours\": { \"startFrom\": \"bore18mm\", \"design\": { \"tube\": { \"bore\": \"900 mm\" } } }", "ours", "$.gaps.ours.design.tube.bore", "900 mm is outside the range; it must be between 2 and 200 mm.")]
    [InlineData("\"ours\": 7", "bore18mm", "$.gaps.ours", "an object is wanted here; this is a number.")]
    public void An_error_in_a_gap_of_the_plan_is_told_where_it_stands(string gaps, string start, string path, string words)
    {
        IReadOnlyList<PlanProblem> problems = DemoPlan.ProblemsOf(Own(gaps, $$"""{ "startFrom": "{{start}}" }"""));
        Assert.Contains(problems, p => p.JsonPath == path && p.Message.StartsWith(words, StringComparison.Ordinal));
        Assert.Equal(problems.Count, problems.DistinctBy(p => (p.JsonPath, p.Message)).Count());
    }

    [Fact]
    public void A_key_misspelt_in_a_gap_of_the_plan_is_told_once()
    {
        const string gap = """ "ours": { "startFrom": "bore18mm", "design": { "vents": [{ "station": "100 mm", "holes": { "diametre": "5 mm", "wallThickness": "0.5 mm", "count": 4 } }] } } """;
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(Own(gap, """{ "startFrom": "ours" }""")));
        Assert.Equal("$.gaps.ours.design.vents[0].holes.diametre", problem.JsonPath);
    }

    [Fact]
    public void A_gap_that_two_stages_have_stands_once()
    {
        StagingPlan plan = DemoPlan.Plan;
        Stage upper = plan.Flight.Stages[1], booster = plan.Flight.Stages[0];
        GapIgnition own = GapOf(DemoPlan.Short);
        own = own with { Design = own.Design with { Tube = own.Design.Tube with { Length = UnitsNet.Length.FromMillimeters(130) } } };
        StageIgnition lights = new StageIgnition.ByGap { Gap = own };
        StagingPlan three = plan with
        {
            Flight = plan.Flight with { Stages = [booster, booster with { Name = "second", Ignition = lights }, upper with { Ignition = lights }] },
        };
        string text = three.ToJson(PlanForm.Brief);
        Assert.Equal(three, StagingPlan.Parse(text));
        Assert.Equal(1, text.Split("130 mm").Length - 1);
        Assert.Equal(2, text.Split("\"startFrom\": \"gap\"").Length - 1);
    }

    [Theory]
    [InlineData("\"judgement: a firm fit\"", Evidence.Judgement, "a firm fit")]
    [InlineData("\"measured:own bench, 2025\"", Evidence.Measured, "own bench, 2025")]
    [InlineData("{ \"source\": \"own\", \"how\": \"invented\" }", Evidence.Invented, "own")]
    public void A_source_is_a_word_and_a_text_or_an_object(string written, Evidence how, string source)
    {
        Provenance read = GapOf(WithGap($$"""{ "startFrom": "bore18mm", "design": { "grain": { "provenance": {{written}} } } }""")).Design.Grain.Provenance;
        Assert.Equal((how, source), (read.How, read.Source));
    }

    [Theory]
    [InlineData("\"a firm fit\"")]
    [InlineData("\"guessed: a firm fit\"")]
    [InlineData("\"judgement:  \"")]
    public void A_source_without_a_known_word_is_refused(string written)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf(WithGap($$"""{ "startFrom": "bore18mm", "design": { "grain": { "provenance": {{written}} } } }""")));
        Assert.Contains("wanted: one of seenInSource, ", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_without_a_source_are_the_plans_own()
    {
        JsonNode plan = JsonNode.Parse(DemoPlan.Short)!;
        plan["flight"]!["stages"]![0]!["motor"]!.AsObject().Remove("provenance");
        Provenance read = DemoPlan.Parse(plan.ToJsonString()).Flight.Stages[0].Motor.Provenance;
        Assert.Equal((Evidence.Judgement, "the plan's own number, no source stated"), (read.How, read.Source));
    }

    [Theory]
    [InlineData("2", "the plan is of version 2; this library reads version 1. A newer one reads it.")]
    [InlineData("0", "0 is no version of a plan; wanted: 1.")]
    [InlineData("1.5", "1.5 is not a count; a whole number is wanted here.")]
    [InlineData("\"1\"", "a number is wanted here; this is a text.")]
    public void A_plan_of_another_version_is_refused_and_nothing_else_said(string version, string words)
    {
        PlanProblem problem = Assert.Single(DemoPlan.ProblemsOf($$"""{ "planVersion": {{version}}, "unknown": 1 }"""));
        Assert.Equal(("$.planVersion", words), (problem.JsonPath, problem.Message));
    }

    [Fact]
    public void A_plan_without_a_version_is_of_the_first() =>
        Assert.Equal(DemoPlan.Plan, DemoPlan.Parse(DemoPlan.Short.Replace("\"planVersion\": 1,", "", StringComparison.Ordinal)));

    [Fact]
    public void A_plan_of_three_stages_is_short()
    {
        string text = DemoPlan.TestText("three-stages.json");
        Assert.True(text.Split('\n').Length <= 81, "more than 80 lines");
        StagingPlan plan = DemoPlan.Parse(text);
        Assert.DoesNotContain(plan.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(plan.Flight.Stages[1].Gap(), plan.Flight.Stages[2].Gap());
        Assert.Equal(plan, StagingPlan.Parse(plan.ToJson(PlanForm.Brief)));
    }

    private static GapIgnition GapOf(string text) => DemoPlan.Parse(text).Flight.Stages[1].Gap()!;

    private static string WithGap(string gap)
    {
        JsonNode plan = JsonNode.Parse(DemoPlan.Short)!;
        plan["flight"]!["stages"]![1]!["ignition"]!["gap"] = JsonNode.Parse(gap);
        return plan.ToJsonString();
    }

    private static string Own(string gaps, string gap) =>
        WithGap(gap).Replace("\"flight\":", $"\"gaps\": {{ {gaps} }}, \"flight\":", StringComparison.Ordinal);
}
