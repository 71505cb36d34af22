using Staging.Core;
using Staging.Core.Plans;

namespace GapStagedFlight;

/// <summary>What is wrong with the input, one line each.</summary>
internal static class Problems
{
    public static IEnumerable<string> Of(Exception e, string plan) => e switch
    {
        PlanFormatException { Problems.Length: > 0 } text =>
        [
            .. text.Problems.Select(p => OneLine($"{plan}: {p}")),
            .. text.MoreProblems > 0 ? (string[])[$"{plan}: and {text.MoreProblems} more problems"] : [],
        ],
        InvalidModelException { Findings.Length: > 0 } model =>
            model.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => OneLine(f.File is null ? $"{plan}: {f}" : f.ToString())),
        _ => [OneLine(e.Message)],
    };

    private static string OneLine(string text) =>
        string.Join(' ', text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
