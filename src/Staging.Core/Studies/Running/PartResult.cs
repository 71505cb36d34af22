using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// The numbers of a study in the order of its cases: of all of them, or of some parts;
/// <see cref="PartitionedStudy{TAnswer}.Of"/> makes the answer.
/// </summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed class PartResult
{
    internal PartResult(StudyHeading heading, ImmutableArray<CaseRange> ranges, ImmutableArray<ImmutableArray<double>> rows) =>
        (Heading, Ranges, Rows) = (heading, ranges, rows);

    /// <summary>
    /// Cases of the whole study: points of a sweep, paths of a screening, rows of variance shares, runs of a tornado.
    /// </summary>
    public long CasesAsked => Heading.Cases;

    /// <summary>Cases in this result.</summary>
    public long Cases => Rows.Length;

    /// <summary>Whether every case is here.</summary>
    public bool IsWhole => Cases == CasesAsked;

    /// <summary>
    /// Which cases are missing, in words: for example <c>3 to 5, 9</c>; empty when none is missing.
    /// </summary>
    public string Missing => CaseRange.Missing(Ranges, CasesAsked);

    /// <summary>The seed; 0 where nothing is drawn.</summary>
    public ulong Seed => Heading.Seed;

    /// <summary>What was run, in words that are equal for all parts of one study.</summary>
    public string Design => Heading.Design;

    /// <summary>Names and units of the inputs.</summary>
    public ImmutableArray<ColumnName> Inputs => Heading.Inputs;

    /// <summary>Names and units of the numbers of a case.</summary>
    public ImmutableArray<ColumnName> Measures => Heading.Measures;

    internal StudyHeading Heading { get; }

    /// <summary>Which cases are here, in order.</summary>
    internal ImmutableArray<CaseRange> Ranges { get; }

    /// <summary>Their numbers; not-a-number for one that is absent.</summary>
    internal ImmutableArray<ImmutableArray<double>> Rows { get; }

    /// <summary>The numbers of the cases that are here.</summary>
    internal IEnumerable<(long Case, ImmutableArray<double> Row)> Numbered => Ranges.SelectMany(r => CasesOf(r)).Zip(Rows);

    /// <summary>Merges parts; the parts may be given in any order, and merged in steps.</summary>
    /// <param name="parts">Parts of one study that do not overlap.</param>
    /// <returns>Their union: with all parts, the bits of the study run whole.</returns>
    /// <exception cref="ArgumentException">There is no part, one is null, they belong to different studies, or two hold
    /// the same case; or, as <see cref="InvalidModelException"/>, they hold more numbers than one machine
    /// keeps.</exception>
    public static PartResult Merge(params ImmutableArray<PartResult> parts)
    {
        StudyHeading heading = StudyHeading.Common(parts, p => p.Heading);
        ImmutableArray<CaseRange> ranges = CaseRange.Joined(parts.SelectMany(p => p.Ranges));
        StudySize.Check(ranges.Sum(r => r.End - r.First), heading.Measures.Length);
        return new PartResult(heading, ranges, [.. parts.SelectMany(p => p.Numbered).OrderBy(n => n.Case).Select(n => n.Row)]);
    }

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The numbers, to the bit.</returns>
    /// <exception cref="FormatException">The text holds no such numbers, or was altered; the message names the
    /// line.</exception>
    public static PartResult Read(TextReader reader) => PartText.Read(reader);

    /// <summary>
    /// Writes the numbers as text, to be returned from another machine. One fact per line; the last but one is the
    /// SHA-256 of the lines before it.
    /// </summary>
    /// <param name="writer">Where to.</param>
    public void Write(TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        PartText.Write(this, writer);
    }

    /// <summary>The number of cases here, and the design, on one line.</summary>
    /// <returns>For example <c>20 of 143 cases: screening on 8 levels</c>.</returns>
    public override string ToString() => Invariant.Text($"{Cases} of {CasesAsked} cases: {Design}");

    private static IEnumerable<long> CasesOf(CaseRange range)
    {
        for (long i = range.First; i < range.End; i++)
            yield return i;
    }
}
