#region tests-on-the-ground
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Plans;
using Staging.Core.Reviews;
#endregion

namespace BuilderTasks;

/// <summary>What tests on a stand teach of the gap as built.</summary>
internal static class TestsOnTheGround
{
    public static void Run()
    {
        #region tests-on-the-ground
        GapProblem built = StagingPlan.Read("demo/plan.json").GapBelow("sustainer"); // as it flies
        GroundTestSeries tests = GroundTestSeries.Read("ground-tests/ten-tests.json"); // invented
        Learned learned = tests.Learn(cases: 256);
        Console.WriteLine($"the gap as built: {learned.Odds(built)}");
        foreach (int index in (int[])[0, 1])
            Console.WriteLine(learned.Posterior.Inputs.OrderByDescending(i => i.Bits).ElementAt(index));
        #endregion
    }
}
