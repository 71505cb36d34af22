#region task-which-drill
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
#endregion

namespace BuilderTasks;

/// <summary>Which drill, and where.</summary>
internal static class WhichDrill
{
    public static void Run()
    {
        #region task-which-drill
        GapProblem gap = StagingPlan.Read("demo/plan.json").GapBelow("sustainer"); // invented
        foreach (int holes in (int[])[1, 2, 4])
        {
            VentAdvice advice = gap.SizeVents(new VentLayout { HoleCount = holes });
            Console.WriteLine($"{holes} holes: {HoleTemplate.Of(advice)[0]}");
        }
        #endregion
    }
}
