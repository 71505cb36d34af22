using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>The head of the text of every part: the study it belongs to, and the cases it holds.</summary>
internal sealed record PartHead(StudyHeading Heading, ImmutableArray<CaseRange> Ranges)
{
    public long Cases => Ranges.Sum(r => r.End - r.First);

    public void Write(LineWriter writer, string title)
    {
        writer.Write($"{title}");
        writer.Write($"cases {Heading.Cases}");
        writer.Write($"seed {Heading.Seed}");
        writer.Write($"design {Heading.Design}");
        List("input", [.. Heading.Inputs.Select(Text)]);
        List("spread", Heading.Spreads);
        List("measure", [.. Heading.Measures.Select(Text)]);
        foreach (CaseRange range in Ranges)
            writer.Write($"range {range.First} {range.End}");

        void List(string word, ImmutableArray<string> members)
        {
            writer.Write($"{word}s {members.Length}");
            for (int i = 0; i < members.Length; i++)
                writer.Write($"{word} {i + 1} {members[i]}");
        }
    }

    public static PartHead Read(StudyLines lines)
    {
        long cases = StudyLines.Count(lines.Take("cases"), "the number of cases");
        if (cases < 1)
            throw new FormatException("a study has one case or more");
        string seed = lines.Take("seed");
        if (!ulong.TryParse(seed, NumberStyles.None, CultureInfo.InvariantCulture, out ulong key))
            throw new FormatException($"the seed has to be a whole number of up to 64 bits, not \"{Excerpt.Of(seed)}\"");
        string design = lines.Take("design");
        ImmutableArray<ColumnName> inputs = Listed(lines, "input", Column);
        ImmutableArray<string> spreads = Listed(lines, "spread", text => text);
        if (spreads.Length > 0 && spreads.Length != inputs.Length)
            throw new FormatException($"there is a spread for each input or for none, not {spreads.Length} for {inputs.Length}");
        ImmutableArray<ColumnName> measures = Listed(lines, "measure", Column);
        var ranges = ImmutableArray.CreateBuilder<CaseRange>();
        foreach (string values in lines.TakeAll("range"))
            ranges.Add(Range(values, ranges.Count > 0 ? ranges[^1].End : 0, cases));
        return new PartHead(new StudyHeading(cases, key, design, inputs, spreads, measures), ranges.ToImmutable());
    }

    private static string Text(ColumnName column) => $"{LineWord.Of(column.Unit)} {column.Name}";

    /// <summary>
    /// The members of a list: the count comes first and each member has its number, so that none can be lost or moved.
    /// </summary>
    private static ImmutableArray<T> Listed<T>(StudyLines lines, string word, Func<string, T> read)
    {
        long count = StudyLines.Count(lines.Take(word + "s"), $"the number of {word}s");
        var members = ImmutableArray.CreateBuilder<T>();
        while (members.Count < count)
            members.Add(read(lines.Take(Invariant.Text($"{word} {members.Count + 1}"))));
        return members.ToImmutable();
    }

    private static ColumnName Column(string values)
    {
        string[] words = StudyLines.Split(values, "a unit and a name", 2);
        return new ColumnName(InputPath.Checked(words[1]), LineWord.Read(words[0]));
    }

    /// <summary>The ranges of a part are in order, so a case that is in two of them is detected at once.</summary>
    private static CaseRange Range(string values, long from, long cases)
    {
        string[] words = StudyLines.Split(values, "the first case and the one past the last", 2);
        var range = new CaseRange(StudyLines.Count(words[0], "the first case"), StudyLines.Count(words[1], "the case past the last"));
        if (range.First < from)
            throw new FormatException($"case {range.First} is in two ranges, or they are out of order");
        return range.First < range.End && range.End <= cases
            ? range
            : throw new FormatException($"there is no range from {range.First} to {range.End} of {cases} cases");
    }
}
