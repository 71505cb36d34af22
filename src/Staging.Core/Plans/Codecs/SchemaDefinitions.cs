using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Codecs;

/// <summary>The named definitions of a schema under construction, each made once and referred to by name.</summary>
internal sealed class SchemaDefinitions
{
    private readonly SortedDictionary<string, JsonObject> made = new(StringComparer.Ordinal);

    /// <summary>A reference to a definition, which is made at its first use.</summary>
    public JsonObject Reference(string name, Func<JsonObject> make)
    {
        string key = name.Replace(' ', '-');
        if (!made.ContainsKey(key))
        {
            made.Add(key, []);
            made[key] = make();
        }

        return new JsonObject { ["$ref"] = "#/$defs/" + key };
    }

    /// <summary>All definitions, by name.</summary>
    public JsonObject All() => new(made.Select(d => KeyValuePair.Create<string, JsonNode?>(d.Key, d.Value)));

    /// <summary>A list of texts.</summary>
    public static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(t => (JsonNode)JsonValue.Create(t)!)];
}
