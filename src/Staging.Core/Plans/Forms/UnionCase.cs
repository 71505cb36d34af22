using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Forms;

/// <summary>One case of a union.</summary>
internal abstract class UnionCase<T>(string kind)
{
    /// <summary>The tag.</summary>
    public string Kind { get; } = kind;

    /// <summary>Some legal value of the case.</summary>
    public abstract T Sample { get; }

    /// <summary>Whether a value is of this case.</summary>
    public abstract bool Holds(T value);

    /// <summary>Reads the object whose tag names this case.</summary>
    public abstract bool TryRead(JsonPlace place, [MaybeNullWhen(false)] out T value);

    /// <summary>Writes what stands beside the tag.</summary>
    public abstract void WriteKeys(Utf8JsonWriter writer, T value);

    /// <summary>What the schema says of the case.</summary>
    public abstract JsonObject Schema(SchemaDefinitions definitions);
}

/// <summary>One case of a union, held by a record.</summary>
internal sealed class UnionCase<T, TCase>(string kind, RecordForm<TCase> form) : UnionCase<T>(kind)
    where TCase : class, T
{
    private static readonly ImmutableArray<string> Tag = [KindKey.Name];

    /// <inheritdoc/>
    public override T Sample => form.Sample;

    /// <inheritdoc/>
    public override bool Holds(T value) => value is TCase;

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, [MaybeNullWhen(false)] out T value)
    {
        bool read = form.TryRead(place, Tag, out TCase found);
        value = found;
        return read;
    }

    /// <inheritdoc/>
    public override void WriteKeys(Utf8JsonWriter writer, T value) => form.WriteKeys(writer, (TCase)(object)value!);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => form.ObjectSchema(definitions, Kind);
}
