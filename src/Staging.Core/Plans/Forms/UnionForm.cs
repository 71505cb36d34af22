using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Forms;

/// <summary>One of several records, told apart by the key <c>kind</c>.</summary>
internal sealed class UnionForm<T>(string name, ImmutableArray<UnionCase<T>> cases) : Form<T>
    where T : class
{
    private readonly ImmutableArray<string> kinds = [.. cases.Select(c => c.Kind)];

    /// <inheritdoc/>
    public override T Sample => cases[0].Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, [MaybeNullWhen(false)] out T value)
    {
        value = null;
        if (!place.IsOf(JsonValueKind.Object, $"an object ({name})"))
            return false;
        if (!place.Element.TryGetProperty(KindKey.Name, out JsonElement tag))
        {
            place.Under(KindKey.Name).Report($"the key is missing; wanted: the kind of {name}, one of {string.Join(", ", kinds)}.");
            return false;
        }

        JsonPlace at = place.Under(KindKey.Name, tag);
        if (!at.TryText(out string? kind))
            return false;
        int index = kinds.IndexOf(kind);
        if (index < 0)
            at.Report(Spelling.NotOneOf("kind", kind, kinds));
        return index >= 0 && cases[index].TryRead(place, out value);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value)
    {
        UnionCase<T> found = cases.FirstOrDefault(c => c.Holds(value))
            ?? throw new ArgumentException($"A plan cannot hold {value.GetType().Name} as {name}; accepted kinds: {string.Join(", ", kinds)}.", nameof(value));
        writer.WriteStartObject();
        writer.WriteString(KindKey.Name, found.Kind);
        found.WriteKeys(writer, value);
        writer.WriteEndObject();
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference(name, () => new JsonObject
    {
        ["oneOf"] = new JsonArray([.. cases.Select(c => (JsonNode)c.Schema(definitions))]),
    });
}
