using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>How the text of every part begins: which study it belongs to, and which cases it holds.</summary>
internal sealed record PartHead(StudyHeading Heading, ImmutableArray<CaseRange> Ranges)
{
    public long Cases => Ranges.Sum(r => r.End - r.First);

    public void Write(TextWriter writer, string title)
    {
        void Line(FormattableString text) => writer.Write(text.ToString(CultureInfo.InvariantCulture) + "\n");

        Line($"{title}");
        Line($"cases {Heading.Cases}");
        Line($"seed {Heading.Seed}");
        Line($"design {Heading.Design}");
        foreach (ColumnName input in Heading.Inputs)
            Line($"input {UnitWord.Of(input.Unit)} {input.Name}");
        foreach (string spread in Heading.Spreads)
            Line($"spread {spread}");
        foreach (ColumnName measure in Heading.Measures)
            Line($"measure {UnitWord.Of(measure.Unit)} {measure.Name}");
        foreach (CaseRange range in Ranges)
            Line($"range {range.First} {range.End}");
    }

    public static PartHead Read(StudyLines lines)
    {
        long cases = StudyLines.Count(lines.Take("cases"), "the number of cases");
        if (cases < 1)
            throw new FormatException("a study has one case or more");
        string seed = lines.Take("seed");
        if (!ulong.TryParse(seed, NumberStyles.None, CultureInfo.InvariantCulture, out ulong key))
            throw new FormatException($"the seed has to be a whole number of up to 64 bits, not \"{seed}\"");
        string design = lines.Take("design");
        ImmutableArray<ColumnName> inputs = [.. lines.TakeAll("input").Select(Column)];
        ImmutableArray<string> spreads = [.. lines.TakeAll("spread")];
        ImmutableArray<ColumnName> measures = [.. lines.TakeAll("measure").Select(Column)];
        var ranges = ImmutableArray.CreateBuilder<CaseRange>();
        foreach (string values in lines.TakeAll("range"))
            ranges.Add(Range(values, ranges.Count > 0 ? ranges[^1].End : 0, cases));
        return new PartHead(new StudyHeading(cases, key, design, inputs, spreads, measures), ranges.ToImmutable());
    }

    private static ColumnName Column(string values)
    {
        string[] words = StudyLines.Split(values, "a unit and a name", 2);
        return new ColumnName(InputPath.Checked(words[1]), UnitWord.Read(words[0]));
    }

    /// <summary>The ranges of a part stand in order, so a case that is in two of them shows at once.</summary>
    private static CaseRange Range(string values, long from, long cases)
    {
        string[] words = StudyLines.Split(values, "the first case and the one past the last", 2);
        var range = new CaseRange(StudyLines.Count(words[0], "the first case"), StudyLines.Count(words[1], "the case past the last"));
        if (range.First < from)
            throw new FormatException($"case {range.First} is in two ranges, or they are out of order");
        return range.First < range.End && range.End <= cases ? range : throw new FormatException($"there is no range from {range.First} to {range.End} of {cases} cases");
    }
}
