using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>The result of a study, or of a part, as text: what a part on another machine sends home. Writing and reading keep every bit.</summary>
/// <remarks>One fact a line, words parted by blanks, names last. Columns of single cases are not in it; those have their own comma-separated form.</remarks>
public static class ReliabilityText
{
    private const string Title = "staging study part, form 1";

    /// <summary>Writes a result.</summary>
    /// <param name="run">The result.</param>
    /// <param name="writer">Where to.</param>
    public static void Write(this ReliabilityRun run, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(writer);
        void Line(FormattableString text) => writer.Write(text.ToString(CultureInfo.InvariantCulture) + "\n");

        Line($"{Title}");
        Line($"cases {run.Heading.Cases}");
        Line($"seed {run.Heading.Seed}");
        Line($"design {run.Heading.Design}");
        Line($"stopped-early {(run.StoppedEarly ? 1 : 0)}");
        foreach (ColumnName input in run.Inputs)
            Line($"input {UnitWord.Of(input.Unit)} {input.Name}");
        foreach (CaseRange range in run.Ranges)
            Line($"range {range.First} {range.End}");
        foreach ((string outcome, long count) in run.Outcomes)
            Line($"outcome {count} {OneLine(outcome)}");
        foreach ((long index, string refusal) in run.Refusals)
            Line($"refusal {index} {OneLine(refusal)}");
        for (int m = 0; m < run.Measures.Length; m++)
        {
            MeasureTally tally = run.Tally.Measures[m];
            Line($"measure {UnitWord.Of(run.Measures[m].Name.Unit)} {run.Measures[m].Name.Name}");
            Line($"ends {tally.Count} {tally.Least:R} {tally.Greatest:R}");
            Line($"sum {tally.Sum.ToText()}");
            Line($"squares {tally.Squares.ToText()}");
            foreach ((long bin, long count) in tally.Bins.Sorted())
                Line($"bin {bin} {count}");
        }
    }

    /// <summary>Reads a result.</summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The result, without columns of single cases.</returns>
    /// <exception cref="FormatException">The text is no such result; the message names the line.</exception>
    public static ReliabilityRun Read(TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        var reading = new ReliabilityReading();
        int number = 0;
        while (reader.ReadLine() is { } line)
        {
            number++;
            try
            {
                if (number == 1 && line != Title)
                    throw new FormatException($"it should read \"{Title}\"");
                if (number > 1)
                    reading.Take(line);
            }
            catch (Exception fault) when (fault is FormatException or OverflowException or ArgumentException)
            {
                throw new FormatException($"Line {number} of the study part: {fault.Message}", fault);
            }
        }

        return reading.Finish();
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ");
}
