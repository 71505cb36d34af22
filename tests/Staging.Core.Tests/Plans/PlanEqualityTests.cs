using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans;

namespace Staging.Core.Tests.Plans;

/// <summary>Plans are values: what one text holds is equal, and one changed leaf makes another plan.</summary>
public class PlanEqualityTests
{
    private static readonly string Whole = DemoPlan.Plan.ToJson();

    [Fact]
    public void Two_reads_of_one_text_are_equal()
    {
        StagingPlan one = StagingPlan.Parse(Whole), other = StagingPlan.Parse(Whole);
        Assert.NotSame(one, other);
        Assert.Equal(one, other);
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.Equal(DemoPlan.Plan, one);
    }

    [Fact]
    public void One_changed_leaf_makes_another_plan()
    {
        StagingPlan plan = StagingPlan.Parse(Whole);
        int leaves = Leaves(JsonNode.Parse(Whole)!).Count(), compared = 0;
        for (int i = 0; i < leaves; i++)
        {
            JsonNode root = JsonNode.Parse(Whole)!;
            JsonValue leaf = Leaves(root).ElementAt(i);
            string path = leaf.GetPath();
            if (!Changed(leaf))
                continue;
            StagingPlan other = StagingPlan.Parse(root.ToJsonString());
            Assert.False(plan == other, path);
            Assert.False(plan.GetHashCode() == other.GetHashCode(), path);
            compared++;
        }

        Assert.True(compared > 140, $"only {compared} leaves were changed");
    }

    /// <summary>Puts another value of the same kind in a leaf; false where only a few words are accepted.</summary>
    private static bool Changed(JsonValue leaf)
    {
        if (leaf.Parent is JsonObject && leaf.GetPropertyName() == "planVersion")
            return false;
        if (leaf.GetValueKind() == JsonValueKind.Number)
        {
            bool isCount = leaf.Parent is JsonObject && leaf.GetPropertyName() is "motorCount" or "count" or "holeCount" or "eventScanParts" or "maxSteps";
            double value = leaf.GetValue<double>();
            leaf.ReplaceWith(isCount ? value + 1 : value * (1 - 1e-9) + (value == 0 ? 1e-9 : 0));
            return true;
        }

        if (leaf.Parent is not JsonObject || leaf.GetPropertyName() is not ("name" or "source" or "locator"))
            return false;
        leaf.ReplaceWith(leaf.GetValue<string>() + ", changed");
        return true;
    }

    private static IEnumerable<JsonValue> Leaves(JsonNode node) => node switch
    {
        JsonObject o => o.Where(p => p.Value is not null).SelectMany(p => Leaves(p.Value!)),
        JsonArray a => a.Where(i => i is not null).SelectMany(i => Leaves(i!)),
        _ => [node.AsValue()],
    };
}
