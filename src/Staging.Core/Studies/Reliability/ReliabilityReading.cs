using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>
/// Reads a reliability result from text. Lines in rising order must rise, so that a repeated or misplaced line is
/// detected.
/// </summary>
internal static class ReliabilityReading
{
    public static ReliabilityRun Of(StudyLines lines)
    {
        PartHead head = PartHead.Read(lines);
        if (!Enum.GetNames<DesignKind>().Contains(head.Heading.Design))
            throw new FormatException($"the design \"{Excerpt.Of(head.Heading.Design)}\" is not known");
        bool stoppedEarly = lines.Take("stopped-early") switch
        {
            "1" => true,
            "0" => false,
            string other => throw new FormatException($"0 or 1 belongs here, not \"{Excerpt.Of(other)}\"")
        };
        var rest = new CaseTally(0, keep: false);
        ReadOutcomes(lines, rest, head.Cases);
        ReadRefusals(lines, rest, head.Ranges);
        ImmutableArray<MeasureTally> measures = [.. head.Heading.Measures.Select(_ => Measure(lines, head.Cases))];
        return new ReliabilityRun(head.Heading, head.Ranges, stoppedEarly, new CaseTally(measures, rest));
    }

    private static void ReadOutcomes(StudyLines lines, CaseTally tally, long cases)
    {
        long left = cases;
        string? last = null;
        foreach (string values in lines.TakeAll("outcome"))
        {
            string[] words = StudyLines.Split(values, "a count and an outcome", 2);
            string outcome = LineWord.Read(words[1]);
            if (last is not null && string.CompareOrdinal(outcome, last) <= 0)
                throw new FormatException($"the outcome \"{Excerpt.Of(outcome)}\" is doubled or out of order");
            long count = CountOf(words[0], "the count of an outcome", left);
            tally.Count(outcome, count);
            (last, left) = (outcome, left - count);
        }

        if (left > 0)
            throw new FormatException($"the part does not add up: {cases} cases in its ranges, {cases - left} with an outcome");
    }

    private static void ReadRefusals(StudyLines lines, CaseTally tally, ImmutableArray<CaseRange> ranges)
    {
        long count = StudyLines.Count(lines.Take("refusals"), "the number of refusals"),
            refused = tally.Outcomes.GetValueOrDefault(ReliabilityRun.Refused);
        if (count > Math.Min(refused, CaseTally.MaxRefusals))
            throw new FormatException($"{count} refusals are listed, of {refused} refused cases; {CaseTally.MaxRefusals} at most are");
        long last = -1;
        for (long i = 0; i < count; i++)
        {
            string[] words = StudyLines.Split(lines.Take("refusal"), "a case and a reason", 2);
            long index = Rising(StudyLines.Count(words[0], "a refused case"), last, "case");
            if (!ranges.Any(r => r.Holds(index)))
                throw new FormatException($"case {index} is not in this part");
            tally.Tell(index, words[1]);
            last = index;
        }
    }

    private static MeasureTally Measure(StudyLines lines, long cases)
    {
        string[] ends = StudyLines.Split(lines.Take("ends"), "a count and two ends", 3);
        var tally = new MeasureTally
        {
            Count = StudyLines.Count(ends[0], "the count of a measure"),
            Min = StudyLines.Number(ends[1], "the least value"),
            Max = StudyLines.Number(ends[2], "the greatest value"),
            Sum = ExactSum.FromText(lines.Take("sum")),
            Squares = ExactSum.FromText(lines.Take("squares")),
        };
        if (tally.Count > cases)
            throw new FormatException($"the part does not add up: {tally.Count} values of {cases} cases");
        long left = tally.Count, last = long.MinValue;
        foreach (string values in lines.TakeAll("bin"))
        {
            string[] words = StudyLines.Split(values, "a bin and a count", 2);
            if (!long.TryParse(words[0], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long bin))
                throw new FormatException($"a bin has a whole number, not \"{Excerpt.Of(words[0])}\"");
            last = Rising(bin, last, "bin");
            long count = CountOf(words[1], "the count of a bin", left);
            tally.Bins.Add(bin, count);
            left -= count;
        }

        if (left > 0)
            throw new FormatException($"the part does not add up: {tally.Count} values, {tally.Count - left} in bins");
        return tally.Flaw() is { } flaw ? throw new FormatException(flaw) : tally;
    }

    /// <summary>A count of at least 1 and at most the number left, so that the sum cannot overflow.</summary>
    private static long CountOf(string text, string what, long left)
    {
        long count = StudyLines.Count(text, what);
        if (count == 0)
            throw new FormatException("a count of 0 is not written");
        return count <= left ? count : throw new FormatException($"the part does not add up: {what} is {count}, and {left} are left");
    }

    private static long Rising(long next, long last, string what) =>
        next > last ? next : throw new FormatException($"{what} {next} is doubled or out of order");
}
