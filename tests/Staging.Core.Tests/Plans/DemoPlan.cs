using Staging.Core.Plans;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Plans;

/// <summary>The invented demo plan of the main sample: its short text, the same in the long form, and the model.</summary>
internal static class DemoPlan
{
    public static string Folder { get; } = Path.Combine(Repository.Root, "samples", "GapStagedFlight", "demo");

    /// <summary>The text of the sample, in the short form.</summary>
    public static string Short { get; } = File.ReadAllText(Path.Combine(Folder, "plan.json"));

    /// <summary>The same plan in the long form, as it was written before there was a short one.</summary>
    public static string Text { get; } = TestText("demo-long.json");

    public static StagingPlan Plan => Parse(Text);

    public static StagingPlan Parse(string json) => StagingPlan.Parse(json, name => File.OpenText(Path.Combine(Folder, name)));

    /// <summary>A text that is kept with the tests.</summary>
    public static string TestText(string name) =>
        File.ReadAllText(Path.Combine(Repository.Root, "tests", "Staging.Core.Tests", "Plans", "Texts", name));

    /// <summary>The problems of a text that is not a plan.</summary>
    public static IReadOnlyList<PlanProblem> ProblemsOf(string json) => Assert.Throws<PlanFormatException>(() => Parse(json)).Problems;

    /// <summary>The demo text with one passage replaced; the passage must be there.</summary>
    public static string With(string passage, string instead)
    {
        Assert.Contains(passage, Text, StringComparison.Ordinal);
        int at = Text.IndexOf(passage, StringComparison.Ordinal);
        return Text[..at] + instead + Text[(at + passage.Length)..];
    }
}
