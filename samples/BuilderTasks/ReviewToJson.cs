#region program-review
using System.Text.Json;
using Staging.Core.Plans;
using Staging.Core.Reviews;
#endregion

namespace BuilderTasks;

/// <summary>A review, and its JSON for other programs.</summary>
internal static class ReviewToJson
{
    public static void Run()
    {
        #region program-review
        StagingReview review = StagingPlan.Read("demo/plan.json").Review(); // invented
        Console.WriteLine($"{review.Verdict}: {review.Stages[0]}");
        using JsonDocument json = JsonDocument.Parse(review.ToJson()); // SI numbers, the unit in the key
        foreach (JsonProperty part in json.RootElement.EnumerateObject())
            Console.WriteLine($"{part.Name}: {part.Value.ValueKind}");
        #endregion
    }
}
