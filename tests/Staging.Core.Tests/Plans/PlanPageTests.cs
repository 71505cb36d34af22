using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Plans;

/// <summary>The examples on the page about the plan file are read by the reader, and say what the library says of them.</summary>
public partial class PlanPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "guides", "plan-file.md")).ReplaceLineEndings("\n");

    [Fact]
    public void The_end_burner_is_read_and_the_plan_with_it_is_legal()
    {
        StagingPlan plan = WithSource(Example("source"));
        Assert.IsType<GapSource.EndBurner>(SourceOf(plan));
        Assert.DoesNotContain(plan.Check(), f => f.Severity == FindingSeverity.Error);
        Assert.Equal(plan, DemoPlan.Parse(plan.ToJson()));
    }

    [Fact]
    public void The_short_gap_is_that_of_the_demo()
    {
        JsonNode plan = JsonNode.Parse(DemoPlan.Short)!;
        plan["flight"]!["stages"]![1]!["ignition"]!["gap"] = JsonNode.Parse(Example("gap"));
        Assert.Equal(DemoPlan.Plan, DemoPlan.Parse(plan.ToJsonString()));
    }

    [Fact]
    public void Its_estimate_is_what_the_page_shows() =>
        Assert.Equal(Example("estimate"), Assert.IsType<GapSource.EndBurner>(SourceOf(WithSource(Example("source")))).BurnThrough().ToString());

    private static GapSource SourceOf(StagingPlan plan) =>
        Assert.IsType<GapIgnition>(Assert.IsType<StageIgnition.ByGap>(plan.Flight.Stages[1].Ignition).Gap).Design.Source;

    private static StagingPlan WithSource(string json)
    {
        JsonNode plan = JsonNode.Parse(DemoPlan.Text)!;
        plan["flight"]!["stages"]![1]!["ignition"]!["gap"]!["design"]!["source"] = JsonNode.Parse(json);
        return DemoPlan.Parse(plan.ToJsonString());
    }

    private static string Example(string name) =>
        Assert.Single(Block().Matches(Page), m => m.Groups["name"].Value == name).Groups["body"].Value.TrimEnd();

    [GeneratedRegex(@"<!-- plan: (?<name>\w+) -->\n```\w+\n(?<body>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Block();
}
