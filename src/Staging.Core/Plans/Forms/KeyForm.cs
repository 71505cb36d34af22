using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Forms;

/// <summary>One key of a record: its name, whether it must be there, and the form of its value.</summary>
internal abstract class KeyForm<TRecord>(string name, bool needed)
{
    /// <summary>The key.</summary>
    public string Name { get; } = name;

    /// <summary>Whether the key must be there.</summary>
    public bool Needed { get; } = needed;

    /// <summary>What stands for the value where the key is left out, or could not be read.</summary>
    public abstract object? Otherwise { get; }

    /// <summary>Reads the value.</summary>
    public abstract bool TryRead(JsonPlace place, out object? value);

    /// <summary>Writes key and value; nothing where an optional value is not set.</summary>
    public abstract void Write(Utf8JsonWriter writer, TRecord record);

    /// <summary>What the schema says of the value.</summary>
    public abstract JsonObject Schema(SchemaDefinitions definitions);

    /// <summary>Says why a value lies outside a range, both in the unit in which the value was written; null where it is no number.</summary>
    public abstract string? Refusal(AcceptedRange range, object? value);

    /// <summary>A value well inside a range; null where it is no number.</summary>
    public abstract object? Inside(AcceptedRange range);
}

/// <summary>A key with a value of a known type.</summary>
internal sealed class KeyForm<TRecord, T>(string name, Form<T> form, bool needed, Func<TRecord, (bool Set, T Value)> get, object? otherwise) : KeyForm<TRecord>(name, needed)
{
    /// <inheritdoc/>
    public override object? Otherwise => Needed ? form.Sample : otherwise;

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, out object? value)
    {
        bool read = form.TryRead(place, out T? found);
        value = read ? found : Otherwise;
        return read;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, TRecord record)
    {
        (bool set, T value) = get(record);
        if (!set)
            return;
        writer.WritePropertyName(Name);
        form.Write(writer, value);
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => form.Schema(definitions);

    /// <inheritdoc/>
    public override string? Refusal(AcceptedRange range, object? value) =>
        form is NumericForm<T> numeric && value is T written ? $"{Name} is {numeric.Say(written)}; it must be {numeric.Say(range, written)}." : null;

    /// <inheritdoc/>
    public override object? Inside(AcceptedRange range) => form is NumericForm<T> numeric ? numeric.FromBase(range.Middle) : null;
}
