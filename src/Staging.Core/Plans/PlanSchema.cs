using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Records;

namespace Staging.Core.Plans;

/// <summary>Makes the schema of a plan from the descriptions of its records.</summary>
internal static class PlanSchema
{
    private static readonly Lazy<string> Made = new(Make);

    /// <summary>The schema as text.</summary>
    public static string Text => Made.Value;

    private static string Make() => Of("Staging plan", PlanCodecs.Plan);

    /// <summary>The schema of a text whose whole is one record.</summary>
    public static string Of<T>(string title, RecordCodec<T> record)
    {
        var definitions = new SchemaDefinitions();
        JsonObject root = record.SchemaOfObject(null, definitions);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = title,
        };
        foreach ((string key, JsonNode? value) in root.ToArray())
        {
            root.Remove(key);
            schema[key] = value;
        }

        schema["$defs"] = definitions.All();
        return JsonText.Of(writer => schema.WriteTo(writer));
    }
}
