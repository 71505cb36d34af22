using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Codecs;

/// <summary>One of several records, told apart by the key <c>kind</c>, which comes first.</summary>
internal sealed class UnionCodec<T>(string name, string description, ImmutableArray<UnionCase<T>> cases) : Codec<T>
    where T : class
{
    private const string KindKey = "kind";

    private readonly ImmutableArray<string> kinds = [.. cases.Select(c => c.Kind)];

    /// <inheritdoc/>
    public override T Sample => cases[0].Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out T? value)
    {
        value = null;
        if (!place.IsOf(JsonValueKind.Object, "an object"))
            return false;
        if (!place.Has(KindKey, out JsonCursor? kindPlace))
        {
            place.Under(KindKey).Report($"the key is missing; wanted: one of {string.Join(", ", kinds)}.");
            return false;
        }

        if (!kindPlace.TryText(out string? kind))
            return false;
        int known = kinds.IndexOf(kind);
        if (known >= 0)
            return cases[known].TryRead(place, KindKey, out value);
        kindPlace.Report(Spelling.NotOneOf("kind", kind, kinds));
        return false;
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The value is of a type that a plan has no words for.</exception>
    public override void Write(Utf8JsonWriter writer, T value)
    {
        UnionCase<T> at = cases.FirstOrDefault(c => c.Holds(value))
            ?? throw new ArgumentException($"A {description.ToLowerInvariant().TrimEnd('.')} of type {value.GetType().Name} has no codec "
                + $"in JSON; there are {string.Join(", ", kinds)}.", nameof(value));
        writer.WriteStartObject();
        writer.WriteString(KindKey, at.Kind);
        at.WriteFields(writer, value);
        writer.WriteEndObject();
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference(name, () => new JsonObject
    {
        ["description"] = description,
        ["oneOf"] = new JsonArray([.. cases.Select(c => c.Schema(KindKey, definitions))]),
    });
}
