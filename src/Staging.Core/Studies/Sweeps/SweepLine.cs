using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The results of a sweep along one axis.</summary>
/// <typeparam name="TResult">The result of each point.</typeparam>
public sealed class SweepLine<TResult>
{
    internal SweepLine(Axis axis, ImmutableArray<TResult> results) => (Axis, Results) = (axis, results);

    /// <summary>The axis.</summary>
    public Axis Axis { get; }

    /// <summary>The results, one for each value of the axis.</summary>
    public ImmutableArray<TResult> Results { get; }

    /// <summary>The number of results, and the axis.</summary>
    /// <returns>For example <c>4 results along gap [mm] from 40 to 340 in 4 values by steps</c>.</returns>
    public override string ToString() => Invariant.Text($"{Results.Length} results along {Axis}");

    /// <summary>Writes values and measures as comma-separated values, with the units in the head.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="measures">The numbers to read from each result.</param>
    public void WriteCsv(TextWriter writer, params EquatableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.Write($"{Csv.Head(Axis.Name)}{SweepCsv.Head(measures)}\n");
        for (int i = 0; i < Results.Length; i++)
            writer.Write($"{Csv.Cell(Axis.Values[i])}{SweepCsv.Cells(measures, Results[i])}\n");
    }
}
