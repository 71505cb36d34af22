using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>
/// The numbers of a study, or of a part, as text: what a part on another machine sends home. Writing and reading keep
/// every bit.
/// </summary>
/// <remarks>One fact a line, words parted by blanks; <c>-</c> stands for a number that is absent.</remarks>
public static class PartText
{
    private const string Title = "staging study points, form 1", Absent = "-";

    /// <summary>Writes the numbers.</summary>
    /// <param name="run">The run.</param>
    /// <param name="writer">Where to.</param>
    public static void Write(this PartResult run, TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(writer);
        new PartHead(run.Heading, run.Ranges).Write(writer, Title);
        foreach ((long index, ImmutableArray<double> row) in run.Numbered)
            writer.Write(Invariant.Text($"case {index} {string.Join(' ', row.Select(Word))}\n"));
        StudyLines.WriteEnd(writer);
    }

    /// <summary>Reads the numbers.</summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The run.</returns>
    /// <exception cref="FormatException">The text holds no such numbers; the message names the line.</exception>
    public static PartResult Read(TextReader reader) => StudyLines.Read(reader, Title, lines =>
    {
        PartHead head = PartHead.Read(lines);
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<double>>();
        foreach (CaseRange range in head.Ranges)
        {
            for (long i = range.First; i < range.End; i++)
                rows.Add(Row(lines.Take($"case {i.ToString(CultureInfo.InvariantCulture)}"), head.Heading.Measures));
        }

        return new PartResult(head.Heading, head.Ranges, rows.DrainToImmutable());
    });

    private static string Word(double number) => double.IsNaN(number) ? Absent : number.ToString("R", CultureInfo.InvariantCulture);

    private static ImmutableArray<double> Row(string values, ImmutableArray<ColumnName> measures)
    {
        string[] words = values.Split(' ');
        return words.Length == measures.Length
            ? [.. words.Select((word, m) => word == Absent ? double.NaN : StudyLines.Number(word, measures[m].Name))]
            : throw new FormatException($"{measures.Length} numbers belong here, one for each measure, not {words.Length}");
    }
}
