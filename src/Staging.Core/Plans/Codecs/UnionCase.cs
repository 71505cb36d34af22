using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>One case of a union: the word that names it and how its record is written.</summary>
internal abstract class UnionCase<T>(string kind)
    where T : class
{
    /// <summary>The word that names it.</summary>
    public string Kind => kind;

    /// <summary>Some legal value.</summary>
    public abstract T Sample { get; }

    /// <summary>Whether a value is to be written as this case.</summary>
    public abstract bool Holds(T value);

    /// <summary>Reads the case from an object that also holds keys of the union.</summary>
    public abstract bool TryRead(JsonCursor place, ImmutableArray<string> besides, [NotNullWhen(true)] out T? value);

    /// <summary>Its keys and values.</summary>
    public abstract void WriteFields(JsonObject target, T value, WriteContext context);

    /// <summary>Its schema.</summary>
    public abstract JsonObject Schema(string kindKey, SchemaDefinitions definitions, JsonObject? start);
}

/// <summary>A case of a union that is held by one type.</summary>
/// <param name="kind">The word that names it.</param>
/// <param name="codec">How its record stands in JSON.</param>
/// <param name="when">Which values of the type are written as this case; null takes all.</param>
internal sealed class UnionCase<T, TCase>(string kind, RecordCodec<TCase> codec, Func<TCase, bool>? when = null) : UnionCase<T>(kind)
    where T : class
    where TCase : class, T
{
    /// <inheritdoc/>
    public override T Sample => codec.Sample;

    /// <inheritdoc/>
    public override bool Holds(T value) => value is TCase x && (when is null || when(x));

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, ImmutableArray<string> besides, [NotNullWhen(true)] out T? value)
    {
        bool good = codec.TryRead(place, besides, out TCase? read);
        value = read;
        return good;
    }

    /// <inheritdoc/>
    public override void WriteFields(JsonObject target, T value, WriteContext context) =>
        codec.WriteFields(target, (TCase)value, context);

    /// <inheritdoc/>
    public override JsonObject Schema(string kindKey, SchemaDefinitions definitions, JsonObject? start) =>
        codec.SchemaOfObject(KeyValuePair.Create(kindKey, Kind), definitions, start);
}
