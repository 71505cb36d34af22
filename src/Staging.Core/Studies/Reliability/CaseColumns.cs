using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The cases of a study as columns of equal length, for plots and notebooks.</summary>
public sealed class CaseColumns
{
    internal CaseColumns(StudyHeading heading, CaseStore store)
    {
        Index = store.Rows.Select(r => r.Index).ToArray();
        Outcome = [.. store.Rows.Select(r => r.Outcome)];
        Inputs = [.. heading.Inputs.Select((name, i) => new NumberColumn(name, store.Rows.Select(r => (double?)r.Inputs[i])))];
        Measures = [.. heading.Measures.Select((name, m) => new NumberColumn(name, store.Rows.Select(r => r.Measures[m])))];
    }

    /// <summary>Number of each case.</summary>
    public ReadOnlyMemory<long> Index { get; }

    /// <summary>Outcome of each case.</summary>
    public ImmutableArray<string> Outcome { get; }

    /// <summary>Value of each input.</summary>
    public ImmutableArray<NumberColumn> Inputs { get; }

    /// <summary>Each measure.</summary>
    public ImmutableArray<NumberColumn> Measures { get; }

    /// <summary>The number of cases, and the heads of the columns.</summary>
    /// <returns>For example <c>1000 cases: mass [kg], period [s]</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Index.Length} cases: {string.Join(", ", Inputs.Concat(Measures).Select(c => c.Name))}");

    /// <summary>
    /// Writes the columns as comma-separated values: a head with the units, then a line a case; numbers so that reading
    /// gives the same bits.
    /// </summary>
    /// <param name="writer">Where to.</param>
    public void WriteCsv(TextWriter writer)
    {
        ArgumentNullException.ThrowIfNull(writer);
        ImmutableArray<NumberColumn> columns = [.. Inputs, .. Measures];
        writer.Write($"case,outcome{string.Concat(columns.Select(c => $",{Csv.Head(c.Name)}"))}\n");
        for (int i = 0; i < Index.Length; i++)
        {
            writer.Write(Invariant.Text($"{Index.Span[i]},{Csv.Cell(Outcome[i])}"));
            foreach (NumberColumn column in columns)
                writer.Write($",{Csv.Cell(column.At(i))}");
            writer.Write('\n');
        }
    }
}
