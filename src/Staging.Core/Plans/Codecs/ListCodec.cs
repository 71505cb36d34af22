using System.Collections.Immutable;
using System.Text.Json.Nodes;
using System.Text.Json;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A list of things of one kind; it may be empty, unless a record asks for more.</summary>
/// <param name="item">How one thing stands in JSON.</param>
/// <param name="min">How many a record asks for at least.</param>
internal sealed class ListCodec<T>(Codec<T> item, int min = 0) : Codec<EquatableArray<T>>
{
    /// <inheritdoc/>
    public override EquatableArray<T> Sample => [.. Enumerable.Repeat(0, min).Select(_ => item.Sample)];

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out EquatableArray<T> value)
    {
        value = [];
        if (!place.IsOf(JsonValueKind.Array, "a list"))
            return false;
        var items = ImmutableArray.CreateBuilder<T>(place.Element.GetArrayLength());
        int index = 0;
        foreach (JsonElement element in place.Element.EnumerateArray())
        {
            if (item.TryRead(place.Item(index++, element), out T? read))
                items.Add(read);
        }

        value = items.ToImmutable();
        return value.Length == index;
    }

    /// <inheritdoc/>
    public override JsonNode Write(EquatableArray<T> value, WriteContext context) =>
        new JsonArray([.. value.Select(each => item.Write(each, context))]);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions)
    {
        var schema = new JsonObject { ["type"] = "array", ["items"] = item.Schema(definitions) };
        if (min > 0)
            schema["minItems"] = min;
        return schema;
    }
}
