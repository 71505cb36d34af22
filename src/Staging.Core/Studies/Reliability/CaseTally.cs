namespace Staging.Core.Studies;

/// <summary>
/// The data gathered from cases: counts, exact sums, bins, and columns if asked for. Adding two tallies is exact.
/// </summary>
internal sealed class CaseTally
{
    /// <summary>Refused cases that are kept with their reason; all are counted.</summary>
    public const int MaxRefusals = 10;

    public CaseTally(int measures, bool keep)
    {
        Measures = [.. Enumerable.Range(0, measures).Select(_ => new MeasureTally())];
        Columns = keep ? new CaseStore() : null;
    }

    public CaseTally(IEnumerable<MeasureTally> measures, CaseTally rest)
    {
        (Outcomes, Refusals) = (rest.Outcomes, rest.Refusals);
        Measures = [.. measures];
    }

    public long Cases => Outcomes.Values.Sum();

    public SortedDictionary<string, long> Outcomes { get; } = new(StringComparer.Ordinal);

    public MeasureTally[] Measures { get; }

    public SortedDictionary<long, string> Refusals { get; } = [];

    public CaseStore? Columns { get; }

    public void Add(CaseRow row)
    {
        Count(row.Outcome, 1);
        for (int m = 0; m < Measures.Length; m++)
        {
            if (row.Measures[m] is { } value)
                Measures[m].Add(value);
        }

        if (row.Refusal is not null)
            Tell(row.Index, row.Refusal);
        Columns?.Add(row);
    }

    public void Add(CaseTally other)
    {
        foreach ((string outcome, long count) in other.Outcomes)
            Count(outcome, count);
        for (int m = 0; m < Measures.Length; m++)
            Measures[m].Add(other.Measures[m]);
        foreach ((long index, string refusal) in other.Refusals)
            Tell(index, refusal);
        Columns?.Add(other.Columns!);
    }

    public void Count(string outcome, long count) => Outcomes[outcome] = Outcomes.GetValueOrDefault(outcome) + count;

    /// <summary>Keeps the first refusals by number of the case.</summary>
    public void Tell(long index, string refusal)
    {
        Refusals[index] = refusal;
        if (Refusals.Count > MaxRefusals)
            Refusals.Remove(Refusals.Keys.Last());
    }
}
