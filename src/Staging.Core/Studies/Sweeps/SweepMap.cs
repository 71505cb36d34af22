using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>The results of a sweep over two axes.</summary>
/// <typeparam name="TResult">The result of each point.</typeparam>
public sealed class SweepMap<TResult>
{
    internal SweepMap(Axis across, Axis up, ImmutableArray<TResult> results) => (Across, Up, Results) = (across, up, results);

    /// <summary>The axis of the first argument.</summary>
    public Axis Across { get; }

    /// <summary>The axis of the second argument.</summary>
    public Axis Up { get; }

    /// <summary>The results row by row: the first row holds the lowest value of <see cref="Up"/>.</summary>
    public ImmutableArray<TResult> Results { get; }

    /// <summary>One result.</summary>
    /// <param name="across">Which value of the first axis, from 0.</param>
    /// <param name="up">Which value of the second axis, from 0.</param>
    /// <returns>The result.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such value.</exception>
    public TResult At(int across, int up) =>
        Results[Guard.In(up, 0, Up.Values.Length - 1, nameof(up)) * Across.Values.Length
            + Guard.In(across, 0, Across.Values.Length - 1, nameof(across))];

    /// <summary>The number of results, and the axes.</summary>
    /// <returns>For example <c>143 results over gap [mm] ... and vent area [mm2] ...</c>.</returns>
    public override string ToString() => Invariant.Text($"{Results.Length} results over {Across} and {Up}");

    /// <summary>
    /// Writes values and measures as comma-separated values, a line a point, with the units in the head.
    /// </summary>
    /// <param name="writer">Where to.</param>
    /// <param name="measures">The numbers to read from each result.</param>
    public void WriteCsv(TextWriter writer, params EquatableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.Write($"{Csv.Head(Across.Name)},{Csv.Head(Up.Name)}{SweepCsv.Head(measures)}\n");
        for (int i = 0; i < Results.Length; i++)
        {
            double across = Across.Values[i % Across.Values.Length], up = Up.Values[i / Across.Values.Length];
            writer.Write($"{Csv.Cell(across)},{Csv.Cell(up)}{SweepCsv.Cells(measures, Results[i])}\n");
        }
    }
}
