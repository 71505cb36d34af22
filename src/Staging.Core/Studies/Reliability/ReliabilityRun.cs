using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The result of a reliability study: a whole study, or some of its parts.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed class ReliabilityRun
{
    /// <summary>
    /// The outcome of a case whose model refused its input (an <see cref="ArgumentException"/>): counted, never
    /// dropped.
    /// </summary>
    public const string Refused = "Refused";

    internal ReliabilityRun(StudyHeading heading, ImmutableArray<CaseRange> ranges, bool stoppedEarly, CaseTally tally)
    {
        (Heading, Ranges, StoppedEarly, Tally) = (heading, ranges, stoppedEarly, tally);
        Outcomes = tally.Outcomes.ToImmutableSortedDictionary(StringComparer.Ordinal);
        Refusals = tally.Refusals.ToImmutableSortedDictionary();
        Measures = [.. heading.Measures.Select((name, m) => new MeasureSummary(name, tally.Measures[m]))];
    }

    /// <summary>Number of cases of the whole study.</summary>
    public long CasesRequested => Heading.Cases;

    /// <summary>Number of cases in this result.</summary>
    public long Cases => Outcomes.Values.Sum();

    /// <summary>Whether every case is here, or the stop rule was satisfied.</summary>
    public bool IsWhole => StoppedEarly || Cases == CasesRequested;

    /// <summary>Whether the stop rule ended the study.</summary>
    public bool StoppedEarly { get; }

    /// <summary>The seed.</summary>
    public ulong Seed => Heading.Seed;

    /// <summary>How the cases were sampled.</summary>
    public DesignKind Design => Enum.Parse<DesignKind>(Heading.Design);

    /// <summary>Names and units of the inputs.</summary>
    public ImmutableArray<ColumnName> Inputs => Heading.Inputs;

    /// <summary>Number of cases with each outcome, by name.</summary>
    public ImmutableSortedDictionary<string, long> Outcomes { get; }

    /// <summary>
    /// The first ten cases that the model refused, by number, with its reason; all are counted under
    /// <see cref="Refused"/>.
    /// </summary>
    public ImmutableSortedDictionary<long, string> Refusals { get; }

    /// <summary>The measures, in the order of the study.</summary>
    public ImmutableArray<MeasureSummary> Measures { get; }

    /// <summary>The properties that all parts of one study share.</summary>
    internal StudyHeading Heading { get; }

    /// <summary>Which cases are here.</summary>
    internal ImmutableArray<CaseRange> Ranges { get; }

    /// <summary>The gathered data.</summary>
    internal CaseTally Tally { get; }

    /// <summary>Merges parts; the parts may be given in any order.</summary>
    /// <param name="parts">Parts of one study that do not overlap.</param>
    /// <returns>Their union: with all parts, the bits of the study run whole.</returns>
    /// <exception cref="ArgumentException">There is no part, one is null, they belong to different studies, two hold
    /// the same case, or one stopped early.</exception>
    public static ReliabilityRun Merge(params ImmutableArray<ReliabilityRun> parts) => Reliability.Merge(parts);

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The result, to the bit, without columns of single cases.</returns>
    /// <exception cref="FormatException">The text is no such result, or was altered; the message names the
    /// line.</exception>
    public static ReliabilityRun Read(TextReader reader) => ReliabilityText.Read(reader);

    /// <summary>
    /// Writes the result, or that of a part, as text, to be returned from another machine. One fact per line; the
    /// last but one is the SHA-256 of the lines before it. Columns of single cases are not in it; those have their own
    /// comma-separated form.
    /// </summary>
    /// <param name="writer">Where to.</param>
    public void Write(TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ReliabilityText.Write(this, writer);
    }

    /// <summary>
    /// The share of an outcome among all cases; refused cases count against it. The intervals are made for
    /// independent cases; for the other designs they are usually too wide.
    /// </summary>
    /// <param name="outcome">The outcome; one that never came has no hits.</param>
    /// <returns>The proportion, which makes intervals.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The run is a part without cases.</exception>
    public Proportion Probability(string outcome) => new(Outcomes.GetValueOrDefault(outcome), Cases);

    /// <summary>A measure by its name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>Its summary.</returns>
    /// <exception cref="ArgumentException">There is no such measure.</exception>
    public MeasureSummary Measure(string name) => Measures.FirstOrDefault(m => m.Name.Name == name)
        ?? throw new ArgumentException(
            $"There is no measure \"{Excerpt.Of(name)}\"; there are {string.Join(", ", Measures.Select(m => m.Name.Name))}.", nameof(name));

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
