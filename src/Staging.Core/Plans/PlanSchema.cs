using System.Text.Json.Nodes;
using Staging.Core.Plans.Forms;

namespace Staging.Core.Plans;

/// <summary>The shape of a plan as a JSON Schema (draft 2020-12), made from the same description that reads and writes plans.</summary>
/// <remarks>It states keys, kinds and units. Ranges of values are rules of the models; <see cref="PlanDocument"/> checks them.</remarks>
public static class PlanSchema
{
    /// <summary>The schema.</summary>
    public static string Text { get; } = Make();

    private static string Make()
    {
        var definitions = new SchemaDefinitions();
        JsonObject plan = PlanForms.Plan.Schema(definitions);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Staging plan",
            ["$ref"] = plan["$ref"]!.DeepClone(),
            ["$defs"] = definitions.All(),
        };
        return JsonText.Of(writer => schema.WriteTo(writer));
    }
}
