using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>One of a few words: the cases of an enumeration, written in camel case.</summary>
internal sealed class EnumCodec<T> : Codec<T>
    where T : struct, Enum
{
    private readonly ImmutableArray<(string Word, T Value)> cases = [.. Enum.GetValues<T>().Select(v => (Camel(v.ToString()), v))];

    /// <summary>The only one; its words follow from the type.</summary>
    public static EnumCodec<T> Words { get; } = new();

    /// <inheritdoc/>
    public override T Sample => cases[0].Value;

    /// <summary>The word for a case.</summary>
    public static string WordFor(T value) => Camel(value.ToString());

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out T value)
    {
        value = default;
        if (!place.TryText(out string? word))
            return false;
        foreach ((string known, T candidate) in cases)
        {
            if (known == word)
            {
                value = candidate;
                return true;
            }
        }

        place.Report(Spelling.NotOneOf("word", word, [.. cases.Select(c => c.Word)]));
        return false;
    }

    /// <inheritdoc/>
    public override JsonNode Write(T value, WriteContext context) => WordFor(value);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) =>
        new() { ["enum"] = SchemaDefinitions.Texts(cases.Select(c => c.Word)) };

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
