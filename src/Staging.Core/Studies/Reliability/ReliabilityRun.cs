using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What a reliability study found: a whole study, or some of its parts.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed record ReliabilityRun
{
    internal ReliabilityRun(StudyHeading heading, ImmutableArray<CaseRange> ranges, bool stoppedEarly, CaseTally tally)
    {
        (Heading, Ranges, StoppedEarly, Tally) = (heading, ranges, stoppedEarly, tally);
        Outcomes = tally.Outcomes.ToImmutableSortedDictionary(StringComparer.Ordinal);
        Refusals = tally.Refusals.ToImmutableSortedDictionary();
        Measures = [.. heading.Measures.Select((name, m) => new MeasureSummary(name, tally.Measures[m]))];
    }

    /// <summary>Cases that were asked for.</summary>
    public long CasesRequested => Heading.Cases;

    /// <summary>Cases that are in this result.</summary>
    public long Cases => Outcomes.Values.Sum();

    /// <summary>Whether every case asked for is here, or the stop rule was satisfied.</summary>
    public bool IsWhole => StoppedEarly || Cases == CasesRequested;

    /// <summary>Whether the stop rule ended the study.</summary>
    public bool StoppedEarly { get; }

    /// <summary>The seed.</summary>
    public ulong Seed => Heading.Seed;

    /// <summary>How the cases were spread.</summary>
    public DesignKind Design => Enum.Parse<DesignKind>(Heading.Design);

    /// <summary>Names and units of the inputs.</summary>
    public ImmutableArray<ColumnName> Inputs => Heading.Inputs;

    /// <summary>How often each outcome came, by name.</summary>
    public ImmutableSortedDictionary<string, long> Outcomes { get; }

    /// <summary>
    /// The first ten cases that the model refused, by number, with its reason; all are counted under
    /// <see cref="Reliability.Refused"/>.
    /// </summary>
    public ImmutableSortedDictionary<long, string> Refusals { get; }

    /// <summary>The measures, in the order of the study.</summary>
    public ImmutableArray<MeasureSummary> Measures { get; }

    /// <summary>What parts of one study have in common.</summary>
    internal StudyHeading Heading { get; }

    /// <summary>Which cases are here.</summary>
    internal ImmutableArray<CaseRange> Ranges { get; }

    /// <summary>Where the numbers come from.</summary>
    internal CaseTally Tally { get; }

    /// <summary>
    /// How probable an outcome is, among all cases: refused ones count against it. The intervals are made for
    /// independent cases; for the other designs they are, as a rule, too wide.
    /// </summary>
    /// <param name="outcome">The outcome; one that never came has no hits.</param>
    /// <returns>The proportion, which makes intervals.</returns>
    public Proportion Probability(string outcome) => new(Outcomes.GetValueOrDefault(outcome), Cases);

    /// <summary>A measure by its name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>Its summary.</returns>
    /// <exception cref="ArgumentException">There is no such measure.</exception>
    public MeasureSummary Measure(string name) => Measures.FirstOrDefault(m => m.Name.Name == name)
        ?? throw new ArgumentException($"There is no measure \"{name}\"; there are {string.Join(", ", Measures.Select(m => m.Name.Name))}.",
            nameof(name));

    /// <summary>The cases one by one.</summary>
    /// <returns>The columns.</returns>
    /// <exception cref="InvalidOperationException">The study did not keep its cases.</exception>
    public CaseColumns Columns() => Tally.Columns is { } store
        ? new CaseColumns(Heading, store)
        : throw new InvalidOperationException("The study did not keep its cases; ask for KeepCases.");

    /// <summary>Outcomes, most frequent first, on one line.</summary>
    /// <returns>For example <c>1000 cases: Lit 0.812, TooCool 0.188</c>.</returns>
    public override string ToString()
    {
        IEnumerable<string> shares = Outcomes.OrderByDescending(o => o.Value)
            .Select(o => Invariant.Text($"{o.Key} {(double)o.Value / Cases:F3}"));
        return Invariant.Text($"{Cases} cases: {string.Join(", ", shares)}");
    }
}
