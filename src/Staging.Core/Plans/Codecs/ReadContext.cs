namespace Staging.Core.Plans.Codecs;

/// <summary>One reading of one text: the problems found so far, and how the files it names are opened.</summary>
internal sealed class ReadContext(Func<string, TextReader>? openThrustHistory)
{
    private readonly List<PlanProblem> problems = [];

    /// <summary>All problems, in the order in which they were found.</summary>
    public IReadOnlyList<PlanProblem> Problems => problems;

    /// <summary>Opens a thrust history by the name the plan gives; null where a plan may name no file.</summary>
    public Func<string, TextReader>? OpenThrustHistory { get; } = openThrustHistory;

    /// <summary>Notes a problem, on one line whatever the text holds.</summary>
    public void Report(string path, string message) => problems.Add(new PlanProblem(OneLine(path), OneLine(message)));

    private static string OneLine(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(c => char.IsControl(c) ? $"\\u{(int)c:x4}" : c.ToString())) : text;
}
