using Staging.Core.GroundTests;
using Staging.Core.Plans;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.GroundTests;

/// <summary>The invented series of the sample.</summary>
internal static class TenTests
{
    public static string Folder { get; } = Path.Combine(Repository.Root, "samples", "ground-tests");

    public static string File { get; } = Path.Combine(Folder, "ten-tests.json");

    public static string Text { get; } = System.IO.File.ReadAllText(File);

    public static GroundTestSeries Series => Parse(Text);

    public static GroundTestSeries Parse(string json) => GroundTestSeries.Parse(json, name => System.IO.File.OpenText(Path.Combine(Folder, name)));

    /// <summary>The problems of the series with one passage replaced; the passage must be there.</summary>
    public static IReadOnlyList<PlanProblem> ProblemsWith(string passage, string instead)
    {
        Assert.Contains(passage, Text, StringComparison.Ordinal);
        int at = Text.IndexOf(passage, StringComparison.Ordinal);
        return Assert.Throws<PlanFormatException>(() => Parse(Text[..at] + instead + Text[(at + passage.Length)..])).Problems;
    }
}
