using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The results of a sweep along one axis.</summary>
/// <typeparam name="TResult">What each point gave.</typeparam>
public sealed record SweepLine<TResult>
{
    internal SweepLine(Axis axis, ImmutableArray<TResult> results) => (Axis, Results) = (axis, results);

    /// <summary>The axis.</summary>
    public Axis Axis { get; }

    /// <summary>The results, one for each value of the axis.</summary>
    public ImmutableArray<TResult> Results { get; }

    /// <summary>Writes values and measures as comma-separated values, with the units in the head.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="measures">The numbers to read from each result.</param>
    public void WriteCsv(TextWriter writer, params ImmutableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.Write($"{Csv.Head(Axis.Name)}{SweepCsv.Head(measures)}\n");
        for (int i = 0; i < Results.Length; i++)
            writer.Write($"{Csv.Cell(Axis.Values[i])}{SweepCsv.Cells(measures, Results[i])}\n");
    }
}
