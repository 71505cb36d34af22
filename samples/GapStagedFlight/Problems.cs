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
            model.Findings.Where(f => f.Severity == FindingSeverity.Error).Select(f => OneLine($"{plan}: {f}")),
        _ => [OneLine(e.Message)],
    };

    private static string OneLine(string text) =>
        string.Join(' ', text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
