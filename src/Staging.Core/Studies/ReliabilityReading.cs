using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>A reliability result on its way back from text.</summary>
internal static class ReliabilityReading
{
    public static ReliabilityRun Of(StudyLines lines)
    {
        PartHead head = PartHead.Read(lines);
        if (!Enum.GetNames<DesignKind>().Contains(head.Heading.Design))
            throw new FormatException($"the design \"{head.Heading.Design}\" is not known");
        bool stoppedEarly = lines.Take("stopped-early") switch { "1" => true, "0" => false, string other => throw new FormatException($"0 or 1 belongs here, not \"{other}\"") };
        var rest = new CaseTally(0, keep: false);
        foreach (string values in lines.TakeAll("outcome"))
        {
            string[] words = StudyLines.Split(values, "a count and an outcome", 2);
            rest.Count(words[1], StudyLines.Count(words[0], "the count of an outcome"));
        }

        foreach (string values in lines.TakeAll("refusal"))
        {
            string[] words = StudyLines.Split(values, "a case and a reason", 2);
            rest.Tell(StudyLines.Count(words[0], "a refused case"), words[1]);
        }

        ImmutableArray<MeasureTally> measures = [.. head.Heading.Measures.Select(_ => Measure(lines))];
        var tally = new CaseTally(measures, rest);
        if (tally.Cases != head.Cases)
            throw new FormatException($"the part does not add up: {head.Cases} cases in its ranges, {tally.Cases} with an outcome");
        return new ReliabilityRun(head.Heading, head.Ranges, stoppedEarly, tally);
    }

    private static MeasureTally Measure(StudyLines lines)
    {
        string[] ends = StudyLines.Split(lines.Take("ends"), "a count and two ends", 3);
        var tally = new MeasureTally
        {
            Count = StudyLines.Count(ends[0], "the count of a measure"),
            Least = StudyLines.Number(ends[1], "the least value"),
            Greatest = StudyLines.Number(ends[2], "the greatest value"),
            Sum = ExactSum.FromText(lines.Take("sum")),
            Squares = ExactSum.FromText(lines.Take("squares")),
        };
        foreach (string values in lines.TakeAll("bin"))
        {
            string[] words = StudyLines.Split(values, "a bin and a count", 2);
            if (!long.TryParse(words[0], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long bin))
                throw new FormatException($"a bin has a whole number, not \"{words[0]}\"");
            tally.Bins.Add(bin, StudyLines.Count(words[1], "the count of a bin"));
        }

        long binned = tally.Bins.Sorted().Sum(b => b.Value);
        return binned == tally.Count ? tally : throw new FormatException($"the part does not add up: {tally.Count} values, {binned} in bins");
    }
}
