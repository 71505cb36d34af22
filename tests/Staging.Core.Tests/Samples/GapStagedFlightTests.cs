using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Samples;

/// <summary>The main sample from outside: what it returns, prints and writes.</summary>
public sealed class GapStagedFlightTests : IDisposable
{
    private static readonly string Demo = Path.Combine(Repository.Root, "samples", "GapStagedFlight", "demo");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task The_demo_lights_and_writes_its_figures_below_the_current_folder()
    {
        Ran ran = await Run();
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Verdict: MAY LIGHT.", Ran.Lines(ran.Output)[1], StringComparison.Ordinal);
        string[] figures = [.. Directory.GetFiles(Path.Combine(scratch.Folder, "figures")).Select(f => Path.GetFileName(f)!).Order()];
        Assert.Equal(["flight.png", "flight.svg", "gap.png", "gap.svg", "race.png", "race.svg"], figures);
        Assert.Contains("burn-through", await File.ReadAllTextAsync(Path.Combine(scratch.Folder, "figures", "race.svg"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_review_fits_two_pages_of_60_lines_and_carries_no_control_codes()
    {
        Ran ran = await Run("--no-figures");
        Assert.InRange(Ran.Lines(ran.Output).Length, 30, 120);
        Assert.All(Ran.Lines(ran.Output), l => Assert.InRange(l.Length, 0, 100));
        Assert.DoesNotContain('\u001b', ran.Output);
        Assert.False(Directory.Exists(Path.Combine(scratch.Folder, "figures")));
    }

    [Fact]
    public async Task A_plan_that_will_not_light_returns_1_and_says_which_stage()
    {
        Ran ran = await Run(Changed(("\"length\": \"120 mm\"", "\"length\": \"250 mm\""), ("\"count\": 2", "\"count\": 1")), "--figures", "there");
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.StartsWith("Verdict: ", Ran.Lines(ran.Output)[1], StringComparison.Ordinal);
        Assert.Contains(Ran.Lines(ran.Output), line => line.StartsWith("  sustainer ", StringComparison.Ordinal) && line.Contains("stays cold", StringComparison.Ordinal));
        Assert.Contains(Ran.Lines(ran.Output), line => line.StartsWith("  tried, ", StringComparison.Ordinal));
        Assert.Equal(6, Directory.GetFiles(Path.Combine(scratch.Folder, "there")).Length);
    }

    [Theory]
    [InlineData("\"siteSize\"", "\"siteWidth\"")]
    [InlineData("\"diameter\": \"5 mm\"", "\"diameter\": \"500 mm\"")]
    [InlineData("\"116.5 mm\"", "\"216.5 mm\"")]
    [InlineData("booster-motor.csv", "lost.csv")]
    [InlineData("\"stages\": [", "\"stages\": [,")]
    public async Task A_bad_plan_returns_2_with_one_line_and_no_trace(string old, string bad) => OneLine(await Run(Changed((old, bad))));

    [Theory]
    [InlineData("lost.json")]
    [InlineData("--colour")]
    [InlineData("--figures")]
    [InlineData("one.json", "two.json")]
    public async Task Bad_arguments_return_2_with_one_line(params string[] arguments) => OneLine(await Run(arguments));

    [Fact]
    public async Task Help_lists_the_options()
    {
        Ran ran = await Run("--help");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.All(["PLAN.json", "--figures DIR", "--no-figures", "--sheet DIR", "--paper NAME", "--help"], option => Assert.Contains(option, ran.Output, StringComparison.Ordinal));
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

    private static void OneLine(Ran ran)
    {
        Assert.Equal((2, ""), (ran.Code, ran.Output));
        string line = Assert.Single(Ran.Lines(ran.Error));
        Assert.StartsWith("error: ", line, StringComparison.Ordinal);
    }

    private Task<Ran> Run(params string[] arguments) => Ran.Sample("GapStagedFlight", scratch.Folder, arguments);

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
