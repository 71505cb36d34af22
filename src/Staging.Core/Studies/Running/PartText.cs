using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>The numbers of a study, or of a part, as text. Writing and reading keep every bit.</summary>
/// <remarks>One fact per line, words separated by spaces; <c>-</c> is a number that is absent.</remarks>
internal static class PartText
{
    private const string Title = "staging study points, form 2", Absent = "-";

    public static void Write(PartResult run, TextWriter writer)
    {
        using var lines = new LineWriter(writer);
        new PartHead(run.Heading, run.Ranges).Write(lines, Title);
        foreach ((long index, ImmutableArray<double> row) in run.Numbered)
            lines.Write($"case {index} {string.Join(' ', row.Select(Word))}");
        lines.End();
    }

    public static PartResult Read(TextReader reader) => StudyLines.Read(reader, Title, lines =>
    {
        PartHead head = PartHead.Read(lines);
        StudySize.Check(head.Cases, head.Heading.Measures.Length);
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
