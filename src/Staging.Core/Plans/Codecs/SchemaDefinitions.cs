using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;

namespace Staging.Core.Plans.Codecs;

/// <summary>The named definitions of a schema under construction, each made once and referred to by name.</summary>
internal sealed class SchemaDefinitions
{
    private const string PartSuffix = "-part";

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

    /// <summary>
    /// Whether objects are described of which any part may be there: what stands beside the name of a starting set.
    /// </summary>
    public bool InPart { get; private set; }

    /// <summary>
    /// A reference to a record: in full, or in part where <see cref="InPart"/>. One that names a starting set is
    /// described in part wherever it stands.
    /// </summary>
    public JsonObject Record(string name, string description, bool startsFromSets, Func<JsonObject> make)
    {
        if (InPart)
            return Reference(name + PartSuffix, make);
        return Reference(name, !startsFromSets ? make : () => new JsonObject
        {
            ["description"] = description,
            ["type"] = "object",
            ["if"] = new JsonObject { ["required"] = Texts([JsonCursor.StartKey]) },
            ["then"] = Part(() => Reference(name + PartSuffix, make)),
            ["else"] = make(),
        });
    }

    /// <summary>Describes something in part.</summary>
    public JsonObject Part(Func<JsonObject> make)
    {
        bool outside = InPart;
        InPart = true;
        JsonObject made = make();
        InPart = outside;
        return made;
    }

    /// <summary>All definitions, by name.</summary>
    public JsonObject All() => new(made.Select(d => KeyValuePair.Create<string, JsonNode?>(d.Key, d.Value)));

    /// <summary>A list of texts.</summary>
    public static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(t => (JsonNode)JsonValue.Create(t)!)];
}
