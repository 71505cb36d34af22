using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Converts the result at a point to numbers, which are written as text, and back.</summary>
/// <typeparam name="TResult">The result, usually a small record of a few values of a run.</typeparam>
public sealed class PartCodec<TResult>
{
    private readonly Func<TResult, IEnumerable<double?>> numbers;
    private readonly Func<ImmutableArray<double?>, TResult> result;

    /// <summary>The codec of a result described by measures.</summary>
    /// <param name="back">Makes the result from the numbers of the measures, in their order [Unit]; null where a
    /// measure had none.</param>
    /// <param name="measures">The numbers to read from a result; at least one.</param>
    /// <exception cref="InvalidModelException">There is no measure, or two have one name.</exception>
    public PartCodec(Func<ImmutableArray<double?>, TResult> back, params EquatableArray<Measure<TResult>> measures)
        : this([.. measures.Select(m => m.Column)], at => measures.Select(m => m.Of(at)), Guard.NotNull(back, nameof(back)))
    {
        if (measures.Length == 0)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU001", "Measures",
                "There is no measure; give at least one.")]);
        InvalidModelException.ThrowOnError(Measure<TResult>.Twice(measures));
    }

    internal PartCodec(EquatableArray<ColumnName> columns, Func<TResult, IEnumerable<double?>> numbers,
        Func<ImmutableArray<double?>, TResult> result) =>
        (Columns, this.numbers, this.result) = (columns, numbers, result);

    /// <summary>Names and units of the numbers.</summary>
    public EquatableArray<ColumnName> Columns { get; }

    /// <summary>Further text that distinguishes two codecs; usually empty.</summary>
    internal string Remark { get; init; } = "";

    /// <summary>The same codec with such a text.</summary>
    internal PartCodec<TResult> With(string remark) => new(Columns, numbers, result) { Remark = Remark + remark };

    /// <summary>The numbers of the result of a case; not-a-number for one that is absent.</summary>
    internal ImmutableArray<double> Row(TResult at, long index) => [.. numbers(at).Select((x, m) => x is { } value && double.IsNaN(value)
        ? throw new ArithmeticException($"Measure \"{Excerpt.Of(Columns[m].Name)}\" of case {index} is not a finite number.")
        : x ?? double.NaN)];

    internal TResult Result(ImmutableArray<double> row) => result([.. row.Select(x => double.IsNaN(x) ? null : (double?)x)]);
}
