using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>How the result at a point becomes numbers, which travel as text, and comes back from them.</summary>
/// <typeparam name="TResult">The result.</typeparam>
public sealed record PartCodec<TResult>
{
    private readonly Func<TResult, IEnumerable<double?>> numbers;
    private readonly Func<ImmutableArray<double?>, TResult> result;

    internal PartCodec(ImmutableArray<ColumnName> columns, Func<TResult, IEnumerable<double?>> numbers,
        Func<ImmutableArray<double?>, TResult> result) =>
        (Columns, this.numbers, this.result) = (columns, numbers, result);

    /// <summary>Names and units of the numbers.</summary>
    public ImmutableArray<ColumnName> Columns { get; }

    /// <summary>What else makes two forms differ, in words; nothing as a rule.</summary>
    internal string Remark { get; init; } = "";

    /// <summary>The numbers of the result of a case; not-a-number stands for one that is absent.</summary>
    internal ImmutableArray<double> Row(TResult at, long index) => [.. numbers(at).Select((x, m) => x is { } value && double.IsNaN(value)
        ? throw new ArithmeticException($"Measure \"{Columns[m].Name}\" of case {index} is not a finite number.")
        : x ?? double.NaN)];

    internal TResult Result(ImmutableArray<double> row) => result([.. row.Select(x => double.IsNaN(x) ? null : (double?)x)]);
}

/// <summary>Makes forms of results.</summary>
public static class PartCodec
{
    /// <summary>The form of a result that is one number [unit].</summary>
    /// <param name="name">What it is called: letters, digits, dots, hyphens and inner spaces.</param>
    /// <param name="unit">Its unit; <c>-</c> where there is none.</param>
    /// <returns>The form.</returns>
    /// <exception cref="ArgumentException">The name is blank or holds other characters.</exception>
    public static PartCodec<double> Number(string name, string unit) => Of(
        x => x[0] ?? throw new ArgumentException($"The number \"{name}\" is absent at a point.", nameof(name)),
        Measure.Of<double>(name, unit, x => x));

    /// <summary>The form of a result that is known by some measures.</summary>
    /// <typeparam name="TResult">The result, as a rule a small record of what is asked of a run.</typeparam>
    /// <param name="back">Makes the result from the numbers of the measures, in their order [Unit]; null where a
    /// measure had none.</param>
    /// <param name="measures">The numbers to read from a result; at least one.</param>
    /// <returns>The form.</returns>
    /// <exception cref="InvalidModelException">There is no measure, or two have one name.</exception>
    public static PartCodec<TResult> Of<TResult>(Func<ImmutableArray<double?>, TResult> back,
        params ImmutableArray<Measure<TResult>> measures)
    {
        ArgumentNullException.ThrowIfNull(back);
        ImmutableArray<Measure<TResult>> given = Guard.Set(measures, nameof(measures));
        if (given.IsEmpty)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU001", "Measures",
                "There is no measure; give one or more.")]);
        InvalidModelException.ThrowOnError(Measure.Twice(given));
        return new PartCodec<TResult>([.. given.Select(m => new ColumnName(m.Name, m.Unit))], at => given.Select(m => m.Of(at)), back);
    }

    /// <summary>
    /// The form of what <see cref="WindowSearch.Find"/> gives on one axis: the answer at every value, and between
    /// neighbours that differ the edge. A search cannot be cut into parts, but a sweep of searches can.
    /// </summary>
    /// <param name="axis">The axis that is searched at every point.</param>
    /// <returns>The form.</returns>
    public static PartCodec<WindowResult> Windows(Axis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        int n = axis.Values.Length;
        ColumnName[] scan = [.. Enumerable.Range(1, n).Select(i => new ColumnName($"holds {i}", "-"))];
        ColumnName[] edges = [.. Enumerable.Range(1, n - 1).Select(i => new ColumnName($"edge {i}", axis.Name.Unit))];
        return new PartCodec<WindowResult>(
            [.. scan, .. edges],
            found => [.. Along(axis, found).Scan.Select(holds => holds ? 1 : (double?)0), .. WindowSearch.Edges(found)],
            numbers => WindowSearch.Result(axis, [.. numbers.Take(n).Select(holds => holds == 1)], numbers[n..]))
        { Remark = $", windows of {axis.InWords}" };
    }

    private static WindowResult Along(Axis axis, WindowResult found) =>
        found.Axis.InWords == axis.InWords
            ? found
            : throw new ArgumentException($"The windows were searched on {found.Axis.InWords}, not on {axis.InWords}.", nameof(found));
}
