namespace Staging.Core.Studies;

/// <summary>
/// The result of a study, or of a part, as text: what a part on another machine sends home. Writing and reading keep
/// every bit.
/// </summary>
/// <remarks>
/// One fact a line, words parted by blanks, names last. Columns of single cases are not in it; those have their own
/// comma-separated form.
/// </remarks>
public static class ReliabilityText
{
    private const string Title = "staging study part, form 2";

    /// <summary>Writes a result.</summary>
    /// <param name="run">The result.</param>
    /// <param name="writer">Where to.</param>
    public static void Write(this ReliabilityRun run, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(writer);
        void Line(Invariant.Handler text) => writer.Write(text.ToStringAndClear() + "\n");

        new PartHead(run.Heading, run.Ranges).Write(writer, Title);
        Line($"stopped-early {(run.StoppedEarly ? 1 : 0)}");
        foreach ((string outcome, long count) in run.Outcomes)
            Line($"outcome {count} {LineWord.Of(outcome)}");
        Line($"refusals {run.Refusals.Count}");
        foreach ((long index, string refusal) in run.Refusals)
            Line($"refusal {index} {refusal}");
        foreach (MeasureTally tally in run.Tally.Measures)
        {
            Line($"ends {tally.Count} {tally.Min:R} {tally.Max:R}");
            Line($"sum {tally.Sum.ToText()}");
            Line($"squares {tally.Squares.ToText()}");
            foreach ((long bin, long count) in tally.Bins.Sorted())
                Line($"bin {bin} {count}");
        }

        StudyLines.WriteEnd(writer);
    }

    /// <summary>Reads a result.</summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The result, without columns of single cases.</returns>
    /// <exception cref="FormatException">The text is no such result; the message names the line.</exception>
    public static ReliabilityRun Read(TextReader reader) => StudyLines.Read(reader, Title, ReliabilityReading.Of);
}
