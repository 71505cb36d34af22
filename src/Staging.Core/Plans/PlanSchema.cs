using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Records;

namespace Staging.Core.Plans;

/// <summary>
/// The published JSON Schema of a plan. It comes from the same description as the reader, so the two cannot drift
/// apart.
/// </summary>
/// <remarks>
/// A schema cannot say everything: repeated keys, the ranges of quantities in every unit (they stand in the
/// descriptions) and columns that do not fit each other are found by the reader alone.
/// </remarks>
public static class PlanSchema
{
    private static readonly Lazy<string> Made = new(Make);

    /// <summary>
    /// The schema, JSON Schema draft 2020-12, as published in <c>docs/schema/staging-plan.schema.json</c>.
    /// </summary>
    public static string Text => Made.Value;

    private static string Make()
    {
        var definitions = new SchemaDefinitions();
        JsonObject root = PlanCodecs.Plan.SchemaOfObject(null, definitions);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Staging plan",
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
