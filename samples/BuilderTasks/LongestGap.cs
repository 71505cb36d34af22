#region task-longest-gap
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;
#endregion

namespace BuilderTasks;

/// <summary>How long the gap may be.</summary>
internal static class LongestGap
{
    public static void Run()
    {
        #region task-longest-gap
        StagingPlan plan = StagingPlan.Read("demo/plan.json"); // invented
        GapQuestion question = plan.QuestionBelow("sustainer"); // flies the plan to that gap
        Area vents = question.Problem.Design.Vents[0].Holes.TotalArea;
        Axis lengths = Axis.Even("gap", "mm", 40, 1240, 5);
        Console.WriteLine($"nominal: {question.LongestGap(vents, lengths)}");

        GapQuestion assured = question with
        {
            Uncertain = GapInputs.Judged,
            Asked = new Assurance { Probability = 0.75, Confidence = 0.8, Cases = 20 },
        };
        Console.WriteLine($"in three of four, judged inputs uncertain: {assured.LongestGap(vents, lengths)}");
        #endregion
    }
}
