namespace Staging.Core.Studies;

/// <summary>The result of a study, or of a part, as text. Writing and reading keep every bit.</summary>
/// <remarks>One fact per line, words separated by spaces, names last.</remarks>
internal static class ReliabilityText
{
    private const string Title = "staging study part, form 3";

    public static void Write(ReliabilityRun run, TextWriter writer)
    {
        using var lines = new LineWriter(writer);
        new PartHead(run.Heading, run.Ranges).Write(lines, Title);
        lines.Write($"stopped-early {(run.StoppedEarly ? 1 : 0)}");
        foreach ((string outcome, long count) in run.Outcomes)
            lines.Write($"outcome {count} {LineWord.Of(outcome)}");
        lines.Write($"refusals {run.Refusals.Count}");
        foreach ((long index, string refusal) in run.Refusals)
            lines.Write($"refusal {index} {refusal}");
        foreach (MeasureTally tally in run.Tally.Measures)
        {
            lines.Write($"ends {tally.Count} {tally.Min:R} {tally.Max:R}");
            lines.Write($"sum {tally.Sum.ToText()}");
            lines.Write($"squares {tally.Squares.ToText()}");
            foreach ((long bin, long count) in tally.Bins.Sorted())
                lines.Write($"bin {bin} {count}");
        }

        lines.End();
    }

    public static ReliabilityRun Read(TextReader reader) => StudyLines.Read(reader, Title, ReliabilityReading.Of);
}
