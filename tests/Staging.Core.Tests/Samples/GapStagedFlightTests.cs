using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using GapStagedFlight.Files;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Hygiene.Sources;
using Staging.Core.Tests.Reviews;

namespace Staging.Core.Tests.Samples;

/// <summary>The main sample from outside: what it returns, prints and writes.</summary>
public sealed class GapStagedFlightTests : IDisposable
{
    private static readonly string Demo = Path.Combine(Repository.Root, "samples", "GapStagedFlight", "demo");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    /// <summary>The one test that starts the program; the others call what it calls.</summary>
    [Fact]
    public async Task The_demo_lights_and_writes_its_figures_below_the_current_folder()
    {
        Ran ran = await Ran.Sample("GapStagedFlight", scratch.Folder);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Verdict: MAY LIGHT.", Ran.Lines(ran.Output)[1], StringComparison.Ordinal);
        Assert.Equal(["flight.png", "flight.svg", "gap.png", "gap.svg", "race.png", "race.svg"], Files("figures"));
        Assert.InRange(Ran.Lines(ran.Output).Length, 30, 120);
        Assert.All(Ran.Lines(ran.Output), l => Assert.InRange(l.Length, 0, 100));
        Assert.DoesNotContain('\u001b', ran.Output);
    }

    [Fact]
    public void A_plan_that_will_not_light_returns_1_and_says_which_stage()
    {
        Ran ran = Run(Changed(("\"length\": \"120 mm\"", "\"length\": \"250 mm\""), ("\"count\": 2", "\"count\": 1")),
            "--cases", "4", "--figures", Below("there"));
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Verdict: ", Ran.Lines(ran.Output)[1], StringComparison.Ordinal);
        Assert.Contains(Ran.Lines(ran.Output), line => line.StartsWith("  sustainer ", StringComparison.Ordinal) && line.Contains("stays cold", StringComparison.Ordinal));
        Assert.Contains(Ran.Lines(ran.Output), line => line.StartsWith("  tried, ", StringComparison.Ordinal));
        Assert.Equal(6, Files("there").Length);
    }

    /// <summary>One review for all that is written of it.</summary>
    [Fact]
    public void A_review_is_written_as_JSON_tables_and_a_page()
    {
        Ran ran = Run("--json", "--cases=0", "--csv", Below("tables"), "--html=" + Below("page.html"));
        Assert.Equal(0, ran.Code);
        using JsonDocument json = JsonDocument.Parse(ran.Output);
        Assert.Equal("lights", json.RootElement.GetProperty("verdict").GetProperty("answer").GetString());
        Assert.Contains("time series: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["flight-2-booster.csv", "flight.csv", "gap.csv"], Files("tables"));
        TableFile gap = TableFile.Read(Below("tables/gap.csv")), flight = TableFile.Read(Below("tables/flight.csv"));
        Assert.Equal(1 + Enum.GetValues<GapChannel>().Length, gap.Heads.Length);
        Assert.Equal(1 + Enum.GetValues<FlightChannel>().Length, flight.Heads.Length);
        Assert.Equal(98444 + 146.1e3, gap["gap pressure [Pa]"].Max(), 100.0);
        Assert.Equal(678.2, flight["height [m]"].Max(), 1.0);
        Assert.Equal(20e-3, gap["joint travel [m]"][^1], 1e-6);
        PageStandsAlone(File.ReadAllText(Below("page.html")));
    }

    /// <summary>Lit on the guide, the stage above leaves a burnt booster that is too heavy to lift: it ends where it stands.</summary>
    [Fact]
    public void A_booster_left_on_the_guide_has_no_table()
    {
        FlightPlan heavy = TestFlights.Plan(TestFlights.Booster() with { StructureMass = UnitsNet.Mass.FromKilograms(5) }, TestFlights.Sustainer(TestFlights.Contact()));
        string plan = scratch.Write("heavy.json", TestPlans.Of(heavy).ToJson());
        Ran ran = Run(plan, "--json", "--cases", "0", "--csv", Below("tables"));
        Assert.Equal(0, ran.Code);
        Assert.Equal(2, JsonNode.Parse(ran.Output)!["bodies"]!.AsArray().Count);
        Assert.Equal(["flight.csv"], Files("tables"));
    }

    [Theory]
    [InlineData("\"siteSize\"", "\"siteWidth\"")]
    [InlineData("\"bore\": \"18 mm\"", "\"bore\": \"1800 mm\"")]
    [InlineData("\"116.5 mm\"", "\"216.5 mm\"")]
    [InlineData("booster-motor.csv", "lost.csv")]
    [InlineData("\"stages\": [", "\"stages\": [,")]
    public void A_bad_plan_returns_2_with_one_line_and_no_trace(string old, string bad) => OneLine(Run(Changed((old, bad))));

    [Fact]
    public void Every_problem_of_a_bad_plan_is_listed_when_asked_for()
    {
        string plan = Changed(("\"siteSize\"", "\"siteWidth\""), ("\"bore\": \"18 mm\"", "\"bore\": \"1800 mm\""));
        Ran one = Run(plan), all = Run(plan, "--all-problems");
        OneLine(one);
        Assert.EndsWith("(and 2 more; --all-problems lists them)", one.Error.TrimEnd(), StringComparison.Ordinal);
        Assert.Equal((2, ""), (all.Code, all.Output));
        Assert.Equal(3, Ran.Lines(all.Error).Length);
        Assert.All(Ran.Lines(all.Error), line => Assert.StartsWith($"error: {plan}: $.", line, StringComparison.Ordinal));
    }

    [Fact]
    public void A_check_lists_findings_and_makes_no_review()
    {
        Ran good = Run("--check"), bad = Run("--check", Changed(("\"116.5 mm\"", "\"216.5 mm\"")));
        Assert.Equal((0, "", "invented two-stage demo, 18 mm motors, gap of 120 mm: no findings"), (good.Code, good.Error, good.Output.TrimEnd()));
        Assert.Equal((2, ""), (bad.Code, bad.Error));
        Assert.StartsWith("error: GAP", bad.Output, StringComparison.Ordinal);
        Assert.EndsWith("cannot be reviewed", bad.Output.TrimEnd(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--figures")]
    [InlineData("--sheet")]
    [InlineData("--csv")]
    [InlineData("--html")]
    public void What_cannot_be_written_is_told_before_anything_is_computed(string option)
    {
        string file = scratch.Write("file", ""), target = Path.Combine(file, "below");
        Ran ran = Run("--cases", "1000000", option, target);
        OneLine(ran);
        Assert.StartsWith($"error: {option} {target} cannot be written: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_cannot_give_orders_to_a_terminal()
    {
        string turned = Changed(("invented two-stage demo, 18 mm motors", @"right to left:\u202e"));
        Assert.Equal(@"right to left:\u202E, gap of 120 mm: no findings", Run("--check", turned).Output.TrimEnd());
        Ran named = Run(scratch.Write("orders.json", File.ReadAllText(turned).Replace(@"\u202e", @"\u001b[31m", StringComparison.Ordinal))), lost = Run("lost\u001b[31m.json");
        Assert.All([named, lost], ran =>
        {
            OneLine(ran);
            Assert.DoesNotContain('\u001b', ran.Error);
        });
    }

    [Theory]
    [InlineData("lost.json")]
    [InlineData("--colour")]
    [InlineData("--json=yes")]
    [InlineData("--figures")]
    [InlineData("--csv", "--json")]
    [InlineData("--cases", "-1")]
    [InlineData("--cases", "many")]
    [InlineData("--paper", "a5")]
    [InlineData("--check", "--json")]
    [InlineData("one.json", "two.json")]
    public void Bad_arguments_return_2_with_one_line(params string[] arguments) => OneLine(Run(arguments));

    [Fact]
    public void Help_lists_the_options()
    {
        Ran ran = Run("--help");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.All(
            ["PLAN.json", "--check", "--all-problems", "--cases N", "--json", "--figures DIR", "--no-figures", "--sheet DIR", "--paper NAME", "--csv DIR", "--html FILE", "--help"],
            option => Assert.Contains($"  {option} ", ran.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void The_demo_plan_holds_the_source_data_of_the_starting_gap()
    {
        StagingPlan plan = StagingPlan.Read(Path.Combine(Demo, "plan.json"));
        GapDesign demo = ((GapIgnition)((StageIgnition.ByGap)plan.Flight.Stages[1].Ignition).Gap).Design, start = StartingGaps.Bore18mm.Design;
        Assert.Equal(start.Source, demo.Source);
        Assert.Equal(start.Grain, demo.Grain);
        Assert.Equal(start.Joint, demo.Joint);
        Assert.Equal(start.MixingAndHeat, demo.MixingAndHeat);
        Assert.Empty(plan.Check());
    }

    private static void PageStandsAlone(string page)
    {
        Assert.DoesNotMatch("(src|href)=\"(?!#)|url\\((?!#)|@import", page);
        Assert.DoesNotMatch("https?://(?!www\\.w3\\.org/)", page);
        string[] ids = [.. Regex.Matches(page, "id=\"([^\"]+)\"").Select(m => m.Groups[1].Value)];
        Assert.Equal(ids.Distinct(), ids);
        Assert.Equal(3, page.Split("<svg ").Length - 1);
        Assert.Equal(3, page.Split("role=\"img\" aria-label=\"The ").Length - 1);
        Assert.Matches("<p style=\"--indent: 2; --hang: \\d+\"><b>peak gap pressure</b> ", page);
        Assert.Single(Regex.Matches(page, "<pre>"));
        Assert.All(["<html lang=\"en\">", "<h1>Staging review: ", "<p class=\"verdict\">Verdict: LIGHTS.", "<h2>Flight</h2>", "<h2>What comes down</h2>", "<h2>Figures</h2>", "prefers-color-scheme: dark"],
            part => Assert.Contains(part, page, StringComparison.Ordinal));
    }

    [Fact]
    public void A_page_shows_names_as_they_are_written()
    {
        StagingPlan plan = TestPlans.Of(TestFlights.TwoStages(TestFlights.Timer(0.3))) with { Name = "<script>alert(\"&\")</script>" };
        string page = HtmlPage.Of(plan.Review(cases: 0));
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("<h1>Staging review: &lt;script&gt;alert(&quot;&amp;&quot;)&lt;/script&gt;</h1>", page, StringComparison.Ordinal);
    }

    private static void OneLine(Ran ran)
    {
        Assert.Equal((2, ""), (ran.Code, ran.Output));
        string line = Assert.Single(Ran.Lines(ran.Error));
        Assert.StartsWith("error: ", line, StringComparison.Ordinal);
    }

    private static Ran Run(params string[] arguments) => Ran.Command(arguments);

    private string Below(string name) => Path.Combine(scratch.Folder, name);

    private string[] Files(string folder) => [.. Directory.GetFiles(Below(folder)).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    /// <summary>A copy of the demo plan with changed text, beside its thrust histories.</summary>
    private string Changed(params (string Old, string New)[] changes)
    {
        foreach (string curve in Directory.GetFiles(Demo, "*.csv"))
            File.Copy(curve, Path.Combine(scratch.Folder, Path.GetFileName(curve)));
        string text = File.ReadAllText(Path.Combine(Demo, "plan.json"));
        foreach ((string old, string next) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, next, StringComparison.Ordinal);
        }

        return scratch.Write("plan.json", text);
    }
}
