using System.Text.Json;
using Json.Schema;
using Staging.Core.Plans;

namespace Staging.Core.Tests.Plans;

/// <summary>The published schema is the one in the package, accepts what the reader accepts and refuses wrong shapes.</summary>
public class PlanSchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(StagingPlan.Schema);

    [Fact]
    public void The_published_schema_is_current() => Published.AssertCurrent("docs/schema/staging-plan.schema.json", StagingPlan.Schema);

    [Fact]
    public void The_published_list_of_keys_is_current() => Published.AssertCurrent("docs/guides/plan-keys.md", KeyPage.Of(StagingPlan.Schema));

    [Fact]
    public void The_demo_plan_and_its_copies_are_valid()
    {
        Assert.True(IsValid(DemoPlan.Short));
        Assert.True(IsValid(DemoPlan.Text));
        Assert.True(IsValid(DemoPlan.Plan.ToJson()));
        Assert.True(IsValid(DemoPlan.Plan.ToJson(PlanForm.Brief)));
        Assert.True(IsValid(DemoPlan.TestText("three-stages.json")));
    }

    [Theory]
    [InlineData("\"startFrom\"", "\"startsFrom\"")]
    [InlineData("\"18 mm\", \"length\": \"120 mm\"", "\"18 furlong\"")]
    [InlineData("\"120 mm\"", "\"120\"")]
    [InlineData("\"invented: ", "\"guessed: ")]
    [InlineData("\"planVersion\": 1", "\"planVersion\": 2")]
    [InlineData("\"planVersion\": 1,", "\"planVersion\": 1, \"gaps\": { \"ours\": { \"desing\": {} } },")]
    public void A_wrong_short_form_is_refused_by_schema_and_reader(string passage, string instead)
    {
        Assert.Contains(passage, DemoPlan.Short, StringComparison.Ordinal);
        string text = DemoPlan.Short.Replace(passage, instead, StringComparison.Ordinal);
        Assert.False(IsValid(text));
        Assert.NotEmpty(DemoPlan.ProblemsOf(text));
    }

    [Theory]
    [InlineData("\"bore\"", "\"boer\"")]
    [InlineData("\"unit\": \"MPa\"", "\"unit\": \"furlong\"")]
    [InlineData("{ \"value\": 5, \"unit\": \"MPa\" }", "5")]
    [InlineData("\"kind\": \"atLaunch\"", "\"kind\": \"byMagic\"")]
    [InlineData("\"kind\": \"sharpEdged\"", "\"kind\": \"sharpEdge\"")]
    [InlineData("\"siteSize\": { \"value\": 400, \"unit\": \"m\" },", "")]
    [InlineData("\"how\": \"judgement\"", "\"how\": \"guess\"")]
    public void A_wrong_shape_is_refused_by_schema_and_reader(string passage, string instead)
    {
        string text = DemoPlan.With(passage, instead);
        Assert.False(IsValid(text));
        Assert.NotEmpty(DemoPlan.ProblemsOf(text));
    }

    private static bool IsValid(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
