using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>One key of a record: what it means, how it is read and written, and which range it must keep.</summary>
internal abstract class Field<TRecord>(int number, string key, string property, string description, bool required)
{
    /// <summary>The key.</summary>
    public string Key => key;

    /// <summary>The property of the record behind it, by which a refusal names it.</summary>
    public string Property => property;

    /// <summary>What it means, in words.</summary>
    public string Description => description;

    /// <summary>Whether it must be there.</summary>
    public bool Required => required;

    /// <summary>The unit of its range, for a number; otherwise null.</summary>
    public abstract string? BaseUnit { get; }

    /// <summary>
    /// Whether a check is about it: of a property by its name, of an argument of a factory by the same name or the key.
    /// </summary>
    public bool IsNamed(string? checkedName) =>
        string.Equals(checkedName, property, StringComparison.OrdinalIgnoreCase) || checkedName == key;

    /// <summary>Its place among the values of a record.</summary>
    protected int Number => number;

    /// <summary>
    /// Sets a value to try the rules of the record with: for a number one that lies below every range, otherwise a
    /// legal sample.
    /// </summary>
    public abstract void SetProbe(FieldValues values);

    /// <summary>Sets a number inside a range.</summary>
    public abstract void SetInside(FieldValues values, AcceptedRange range);

    /// <summary>Reads the field from the keys of an object, or takes the value that its absence stands for.</summary>
    public abstract void Read(KeySet keys, AcceptedRange? range, FieldValues values);

    /// <summary>
    /// Adds key and value: never without a value, and in the short form not where absence stands for that value.
    /// </summary>
    public abstract void Write(JsonObject target, TRecord record, WriteContext context);

    /// <summary>What the schema says of it, its range in the base unit included.</summary>
    public abstract JsonObject Schema(AcceptedRange? range, SchemaDefinitions definitions);
}

/// <summary>A key with a value of one type.</summary>
internal sealed class Field<TRecord, TValue>(
    int number, string key, string property, string description, bool required, Codec<TValue> codec, Func<TRecord, TValue> get,
    TValue absent)
    : Field<TRecord>(number, key, property, description, required)
{
    /// <inheritdoc/>
    public override string? BaseUnit => (codec as NumericCodec<TValue>)?.BaseUnit;

    /// <summary>The value of this field among those of a record.</summary>
    public TValue this[FieldValues values] => (TValue)values[Number]!;

    /// <inheritdoc/>
    public override void SetProbe(FieldValues values) =>
        values[Number] = codec is NumericCodec<TValue> numeric ? numeric.FromBase(double.MinValue) : codec.Sample;

    /// <inheritdoc/>
    public override void SetInside(FieldValues values, AcceptedRange range) =>
        values[Number] = ((NumericCodec<TValue>)codec).FromBase(range.Middle);

    /// <inheritdoc/>
    public override void Read(KeySet keys, AcceptedRange? range, FieldValues values)
    {
        values[Number] = absent;
        if ((!Required && !keys.Has(Key)) || !keys.TryGet(Key, Description, out JsonCursor? place)
            || !codec.TryRead(place, range, out TValue? value))
            return;
        values[Number] = value;
        place.Reading.Keep(place);
        if (range is not null && codec is NumericCodec<TValue> numeric && !range.Holds(numeric.ToBase(value)))
            place.Report($"{numeric.Say(value)} is outside the range; it must be {numeric.Say(range, value)}.");
    }

    /// <inheritdoc/>
    public override void Write(JsonObject target, TRecord record, WriteContext context)
    {
        TValue value = get(record);
        if (value is null || (context.Form == PlanForm.Brief && !Required && EqualityComparer<TValue>.Default.Equals(value, absent)))
            return;
        target.Add(Key, codec.Write(value, context));
    }

    /// <inheritdoc/>
    public override JsonObject Schema(AcceptedRange? range, SchemaDefinitions definitions)
    {
        JsonObject schema = codec.Schema(definitions);
        schema["description"] = range is null || range.Unit == "-" ? Description : $"{Description} Range: {range.InWords()} {range.Unit}.";
        if (range is { Unit: "-" })
        {
            schema[range.LowIncluded ? "minimum" : "exclusiveMinimum"] = range.Low;
            schema["maximum"] = range.High;
        }

        return schema;
    }
}
