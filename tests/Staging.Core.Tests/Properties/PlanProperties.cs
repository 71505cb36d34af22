using System.Text.Json;
using FsCheck;
using FsCheck.Xunit;
using Json.Schema;
using Staging.Core.Plans;
using Staging.Core.Tests.Plans;

namespace Staging.Core.Tests.Properties;

public class PlanProperties
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(StagingPlan.Schema);

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 100)]
    public void What_is_written_is_read_again_to_the_last_bit_and_unit(StagingPlan plan)
    {
        string text = plan.ToJson();
        StagingPlan again = StagingPlan.Parse(text);
        Assert.Equal(plan, again);
        Assert.Equal(text, again.ToJson());
    }

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 100)]
    public void The_short_text_reads_to_the_plan_of_the_long_one(StagingPlan plan)
    {
        string text = plan.ToJson(PlanForm.Brief);
        StagingPlan again = StagingPlan.Parse(text);
        Assert.Equal(plan, again);
        Assert.Equal(StagingPlan.Parse(plan.ToJson()), again);
        Assert.Equal(text, again.ToJson(PlanForm.Brief));
        Assert.True(Fits(text), text);
    }

    /// <summary>However the parts of a plan fit each other, a check only tells.</summary>
    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 200)]
    public void Any_plan_is_checked_without_an_exception(StagingPlan plan)
    {
        foreach (ModelFinding finding in plan.Check())
        {
            Assert.Matches("^[A-Z]{3}[0-9]{3}$", finding.Code);
            Assert.DoesNotMatch("NaN|Infinity|∞", finding.Message);
            Assert.NotEmpty(finding.Path);
        }
    }

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 40)]
    public bool What_is_written_fits_the_schema(StagingPlan plan) => Fits(plan.ToJson());

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 200)]
    public void A_damaged_text_is_a_plan_or_a_refusal_and_never_anything_else(StagingPlan plan, int seed)
    {
        string text = Damage.ToText(plan.ToJson(), seed);
        try
        {
            StagingPlan.Parse(text, _ => throw new FileNotFoundException("none"));
        }
        catch (PlanFormatException refusal)
        {
            AssertTellsWhere(refusal);
        }
    }

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 200)]
    public void What_the_reader_takes_the_schema_takes(StagingPlan plan, int seed)
    {
        string text = Damage.ToValue(plan.ToJson(), seed);
        try
        {
            StagingPlan.Parse(text);
            Assert.True(Fits(text));
        }
        catch (PlanFormatException refusal)
        {
            AssertTellsWhere(refusal);
        }
    }

    [Property(Arbitrary = [typeof(PlanCases)], MaxTest = 100)]
    public void A_wrong_shape_is_refused_by_reader_and_schema(StagingPlan plan, int seed)
    {
        string text = Damage.ToShape(plan.ToJson(), seed);
        AssertTellsWhere(Assert.Throws<PlanFormatException>(() => StagingPlan.Parse(text)));
        Assert.False(Fits(text), text);
    }

    private static void AssertTellsWhere(PlanFormatException refusal)
    {
        Assert.NotEmpty(refusal.Problems);
        Assert.All(refusal.Problems, p => Assert.StartsWith("$", p.JsonPath, StringComparison.Ordinal));
        Assert.All(refusal.Problems, p => Assert.False(string.IsNullOrWhiteSpace(p.Message)));
        Assert.Equal(refusal.Problems.Length == 1 ? 1 : Math.Min(refusal.Problems.Length, 21) + 1, refusal.Message.Split('\n').Length);
    }

    private static bool Fits(string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
