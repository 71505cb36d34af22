#region program-text
using Staging.Core;
using Staging.Core.Plans;
using Staging.Core.Reviews;
#endregion

namespace BuilderTasks;

/// <summary>A plan that comes as text, and what is told of one with mistakes.</summary>
internal static class PlanFromText
{
    public static void Run()
    {
        #region program-text
        string text = File.ReadAllText("demo/plan.json").Replace("\"5 mm\"", "5"); // from a form or a request; here with a mistake
        try
        {
            StagingPlan plan = StagingPlan.Parse(text, name => File.OpenText(Path.Combine("demo", name))); // name: a thrust history
            Console.WriteLine(plan.Review(cases: 0).ToJson());
        }
        catch (PlanFormatException refused) // the text: every mistake at once, each with its place
        {
            foreach (PlanProblem problem in refused.Problems)
                Console.WriteLine($"{problem.JsonPath}: {problem.Message}");
        }
        catch (InvalidModelException refused) // it can be read, and does not hang together
        {
            foreach (ModelFinding finding in refused.Findings)
                Console.WriteLine(finding);
        }
        #endregion
    }
}
