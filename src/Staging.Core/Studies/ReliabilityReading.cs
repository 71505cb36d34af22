using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>A result on its way back from text, line by line.</summary>
internal sealed class ReliabilityReading
{
    private readonly List<ColumnName> inputs = [], measures = [];
    private readonly List<CaseRange> ranges = [];
    private readonly List<MeasureTally> tallies = [];
    private readonly CaseTally rest = new(0, keep: false);
    private long cases;
    private ulong seed;
    private DesignKind design;
    private bool stoppedEarly;

    public void Take(string line)
    {
        string[] words = line.Split(' ', 3);
        string first = words.ElementAtOrDefault(1) ?? throw new FormatException($"\"{line}\" says nothing");
        string second = words.ElementAtOrDefault(2) ?? "";
        switch (words[0])
        {
            case "cases": cases = Whole(first); break;
            case "seed": seed = ulong.Parse(first, CultureInfo.InvariantCulture); break;
            case "design": design = Enum.Parse<DesignKind>(first); break;
            case "stopped-early": stoppedEarly = first == "1"; break;
            case "input": inputs.Add(Column(first, second)); break;
            case "range": ranges.Add(Range(Count(first), Count(second))); break;
            case "outcome": rest.Count(second, Count(first)); break;
            case "refusal": rest.Tell(Count(first), second); break;
            case "measure": measures.Add(Column(first, second)); tallies.Add(new MeasureTally()); break;
            case "ends": Ends(Count(first), second.Split(' ')); break;
            case "sum": tallies[^1].Sum = ExactSum.FromText(first); break;
            case "squares": tallies[^1].Squares = ExactSum.FromText(first); break;
            case "bin": tallies[^1].Bins.Add(Whole(first), Count(second)); break;
            default: throw new FormatException($"\"{words[0]}\" is not known");
        }
    }

    public ReliabilityRun Finish()
    {
        var tally = new CaseTally(tallies, rest);
        ImmutableArray<CaseRange> joined = Joined();
        long held = joined.Sum(r => r.End - r.First);
        if (cases < 1 || joined.IsEmpty || joined[^1].End > cases || held != tally.Cases || tally.Measures.Any(m => m.Bins.Sorted().Sum(b => b.Value) != m.Count))
            throw new FormatException($"The study part does not add up: {cases} cases asked for, {held} in its ranges, {tally.Cases} with an outcome.");
        return new ReliabilityRun(new StudyHeading(cases, seed, design, [.. inputs], [.. measures]), joined, stoppedEarly, tally);
    }

    private static long Whole(string text) => long.Parse(text, CultureInfo.InvariantCulture);

    private static long Count(string text) => Whole(text) is >= 0 and long n ? n : throw new FormatException($"{text} is below 0");

    private static CaseRange Range(long first, long end) =>
        first <= end ? new CaseRange(first, end) : throw new FormatException($"the range from {first} ends before, at {end}");

    private static ColumnName Column(string unit, string name) => new(InputPath.Checked(name), UnitWord.Read(unit));

    private ImmutableArray<CaseRange> Joined()
    {
        try
        {
            return CaseRange.Joined(ranges);
        }
        catch (ArgumentException fault)
        {
            throw new FormatException("The study part does not add up: two of its ranges overlap.", fault);
        }
    }

    private void Ends(long count, string[] ends)
    {
        if (ends.Length != 2)
            throw new FormatException("a count and two ends belong here");
        MeasureTally tally = tallies[^1];
        tally.Count = count;
        tally.Least = double.Parse(ends[0], CultureInfo.InvariantCulture);
        tally.Greatest = double.Parse(ends[1], CultureInfo.InvariantCulture);
    }
}
