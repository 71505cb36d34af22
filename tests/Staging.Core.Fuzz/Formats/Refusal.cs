using Staging.Core.Plans;

namespace Staging.Core.Fuzz.Formats;

/// <summary>How a text in JSON is refused.</summary>
internal static class Refusal
{
    /// <summary>Characters of a message, which may list the words that are accepted.</summary>
    public const int LongestMessage = 1000;

    /// <summary>A refusal carries its problems, each with a place and a short message.</summary>
    public static void Check(PlanFormatException refusal)
    {
        Promise.Keep(refusal.Problems.Length > 0, "a refusal carries its problems");
        foreach (PlanProblem problem in refusal.Problems)
        {
            Promise.Told(problem.Message, LongestMessage);
            Promise.Keep(problem.JsonPath.StartsWith('$'), "a problem has a place");
        }
    }
}
