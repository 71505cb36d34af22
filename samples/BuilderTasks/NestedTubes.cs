#region task-nested-tubes
using Staging.Core.Plans;
using Staging.Core.Reviews;
#endregion

namespace BuilderTasks;

/// <summary>Nested tubes: holes in one wall or in both.</summary>
internal static class NestedTubes
{
    public static void Run()
    {
        #region task-nested-tubes
        foreach (string file in (string[])["plans/nested-tubes-inner-only.json", "plans/nested-tubes.json"]) // invented
        {
            StagingReview review = StagingPlan.Read(file).Review();
            Console.WriteLine($"{review.Plan.Name}\n  {review.Stages[0]}");
            foreach (TriedChange change in review.Stages[0].Tried)
                Console.WriteLine($"    tried, {change}");
        }
        #endregion
    }
}
