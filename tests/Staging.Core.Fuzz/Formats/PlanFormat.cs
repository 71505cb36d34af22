using Staging.Core.Plans;

namespace Staging.Core.Fuzz.Formats;

/// <summary>A plan as JSON, with a thrust history beside it.</summary>
internal static class PlanFormat
{
    public static bool Reads(string text)
    {
        if (!Attempt.Gives<StagingPlan, PlanFormatException>(() => StagingPlan.Parse(text, Beside), Refusal.Check, out StagingPlan? plan))
            return false;
        foreach (ModelFinding finding in plan.Check())
            Promise.Told(finding.Message, Refusal.LongestMessage);
        Promise.Keep(plan == StagingPlan.Parse(plan.ToJson()), "a plan is read as it was");
        Promise.Keep(plan == StagingPlan.Parse(plan.ToJson(PlanForm.Brief)), "a plan in brief is read as it was");
        return true;
    }

    private static StringReader Beside(string name) => name.EndsWith(".csv", StringComparison.Ordinal)
        ? new StringReader("time_s,thrust_N\n0,0\n0.1,14\n0.4,5\n1.8,4.5\n1.85,0\n")
        : throw new FileNotFoundException();
}
