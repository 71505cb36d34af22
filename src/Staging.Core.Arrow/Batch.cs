using System.Collections.Immutable;
using Apache.Arrow;
using Apache.Arrow.Types;
using Staging.Core.Studies;

namespace Staging.Core.Arrow;

/// <summary>Gathers columns of equal length.</summary>
internal sealed class Batch
{
    private readonly List<Field> fields = [];
    private readonly List<IArrowArray> arrays = [];

    public Batch Add(string name, string unit, ReadOnlySpan<double> values) =>
        Append(name, unit, new DoubleArray.Builder().Append(values).Build());

    public Batch Add(ColumnName name, ImmutableArray<double> values) => Add(name.Name, name.Unit, values.AsSpan());

    public Batch Add(string name, ReadOnlySpan<long> values) => Append(name, "-", new Int64Array.Builder().Append(values).Build());

    public Batch Add(string name, ImmutableArray<string> values) => Append(name, "-", new StringArray.Builder().AppendRange(values).Build());

    public Batch Add(NumberColumn column) =>
        Add(column.Name.Name, column.Name.Unit, Enumerable.Range(0, column.Values.Length).Select(column.At));

    public Batch Add<TResult>(Measure<TResult> measure, ImmutableArray<TResult> results) =>
        Add(measure.Name, measure.Unit, results.Select(measure.Of));

    /// <summary>Adds a column for each of some items.</summary>
    public Batch AddAll<TItem>(IEnumerable<TItem> items, Action<Batch, TItem> add)
    {
        foreach (TItem item in items)
            add(this, item);
        return this;
    }

    public RecordBatch Done() => new(new Schema(fields, null), arrays, arrays[0].Length);

    private Batch Add(string name, string unit, IEnumerable<double?> values)
    {
        var builder = new DoubleArray.Builder();
        foreach (double? value in values)
            builder.Append(value);
        return Append(name, unit, builder.Build());
    }

    private Batch Append(string name, string unit, IArrowArray array)
    {
        if (fields.Exists(f => f.Name == name))
            throw new ArgumentException($"Two columns are called \"{name}\"; give each its own name.");
        IArrowType type = array.Data.DataType;
        fields.Add(new Field(name, type, nullable: array.NullCount > 0, [new KeyValuePair<string, string>("unit", unit)]));
        arrays.Add(array);
        return this;
    }
}
