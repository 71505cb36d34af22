#region which-delay
using Staging.Core.Flight;
using Staging.Core.Plans;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>Which delay of the upper motor fits.</summary>
internal static class WhichDelay
{
    public static void Run()
    {
        #region which-delay
        StagingPlan plan = StagingPlan.Read("demo/plan.json");
        foreach (DelayOption option in plan.Flight.ChooseDelay([.. Enumerable.Range(4, 5).Select(s => Duration.FromSeconds(s))]))
            Console.WriteLine(option);
        #endregion
    }
}
