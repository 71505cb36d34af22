using Staging.Core;
using Staging.Core.Plans;

namespace GapStagedFlight;

/// <summary>What is wrong with the input, one line each.</summary>
internal static class Problems
{
    public static IEnumerable<string> Of(Exception e, string plan) => e switch
    {
        PlanFormatException { Problems.Length: > 0 } text => text.Problems.Select(p => OneLine($"{plan}: {p}")),
        InvalidModelException { Findings.Length: > 0 } model =>
            model.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => OneLine(f.File is null ? $"{plan}: {f}" : f.ToString())),
        _ => [OneLine(e.Message)],
    };

    /// <summary>How many more there are, of which only the number is kept.</summary>
    public static int Untold(Exception e) => e is PlanFormatException text ? text.MoreProblems : 0;

    private static string OneLine(string text) =>
        string.Join(' ', text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
