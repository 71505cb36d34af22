using System.Text;
using System.Text.Json.Nodes;

namespace Staging.Core.Tests.Plans;

/// <summary>The page that lists every key of a plan, made from the schema.</summary>
internal static class KeyPage
{
    private const string Head = """
        # Keys of the plan file

        Made from the [schema](../schema/staging-plan.schema.json). The rules are told in [The plan file](plan-file.md). A key in brackets may be left out.

        ## Units

        | quantity | units, each in `{ "value": ..., "unit": "..." }` |
        |---|---|

        """;

    public static string Of(string schema)
    {
        JsonObject root = JsonNode.Parse(schema)!.AsObject();
        JsonObject definitions = root["$defs"]!.AsObject();
        var page = new StringBuilder(Head);
        foreach ((string name, JsonNode? definition) in definitions.Where(d => Unit(d.Value!) is not null))
            page.Append(null, $"| {name.Replace('-', ' ')} | {string.Join(", ", Unit(definition!)!.Select(u => $"`{u}`"))} |\n");
        page.Append("\n## stagingPlan\n");
        Append(page, root.AsObject());
        foreach ((string name, JsonNode? definition) in definitions.Where(d => Unit(d.Value!) is null))
        {
            page.Append(null, $"\n## {name}\n\n{definition!["description"]}\n");
            JsonArray cases = definition["oneOf"] as JsonArray ?? [definition.DeepClone()];
            foreach (JsonNode? at in cases)
                Append(page, at!.AsObject());
        }

        return page.ToString();
    }

    private static void Append(StringBuilder page, JsonObject record)
    {
        JsonObject properties = record["properties"]!.AsObject();
        string[] required = [.. record["required"]!.AsArray().Select(r => (string)r!)];
        if (properties["kind"] is { } kind)
            page.Append(null, $"\n**`\"kind\": \"{kind["const"]}\"`**: {record["description"]}\n");
        if (properties.All(p => p.Key == "kind"))
            return;
        page.Append("\n| key | is | means |\n|---|---|---|\n");
        foreach ((string key, JsonNode? value) in properties.Where(p => p.Key != "kind"))
            page.Append(null, $"| {(required.Contains(key) ? $"`{key}`" : $"[`{key}`]")} | {Kind(value!)} | {value!["description"]} |\n");
    }

    private static string Kind(JsonNode value)
    {
        if (value["$ref"] is { } reference)
            return Link((string)reference!);
        if (value["enum"] is JsonArray words)
            return string.Join(", ", words.Select(w => $"`{w}`"));
        return (string)value["type"]! switch
        {
            "array" when value["items"]!["$ref"] is { } item => "list of " + Link((string)item!),
            "array" => "list of numbers",
            "integer" => "count" + Range(value),
            "number" => "number" + Range(value),
            _ => "text",
        };
    }

    private static string Link(string reference) => reference[(reference.LastIndexOf('/') + 1)..].Replace('-', ' ');

    private static string Range(JsonNode value) => value["maximum"] is { } most
        ? $", {value["minimum"] ?? value["exclusiveMinimum"]} to {most}"
        : "";

    private static IEnumerable<string>? Unit(JsonNode definition) =>
        (definition["properties"]?["unit"]?["enum"] as JsonArray)?.Select(u => (string)u!);
}
