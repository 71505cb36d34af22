using System.Text;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Records;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Tests.Plans;

/// <summary>The pages that list every key of a plan and of a series of ground tests, made from their schemas.</summary>
internal static class KeyPage
{
    private const string StartKey = "startFrom", Part = "-part";

    private const string Head = """
        # Keys of the plan file

        Made from the [schema](../schema/staging-plan.schema.json). The rules are told in [The plan file](plan-file.md). A key in brackets may be left out.

        ## Units

        | quantity | units, as `"18 mm"` or `{ "value": 18, "unit": "mm" }` |
        |---|---|

        """;

    private const string HeadOfTests = """
        # Keys of the ground tests

        Made from the [schema](../schema/ground-tests.schema.json). The rules are those of [the plan file](plan-file.md); `gap` and all within it, units and
        starting sets stand among the [keys of the plan](plan-keys.md). A key in brackets may be left out.

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
        Append(page, definitions, _ => true);
        AppendSets(page);
        return page.ToString();
    }

    /// <summary>The keys of the tests; those of a plan stand on its own page.</summary>
    public static string OfTests(string schema, string ofPlan)
    {
        JsonObject root = JsonNode.Parse(schema)!.AsObject(), known = JsonNode.Parse(ofPlan)!["$defs"]!.AsObject();
        var page = new StringBuilder(HeadOfTests);
        page.Append("\n## groundTestSeries\n");
        Append(page, root);
        Append(page, root["$defs"]!.AsObject(), name => !known.ContainsKey(name));
        return page.ToString();
    }

    private static void Append(StringBuilder page, JsonObject definitions, Func<string, bool> isShown)
    {
        foreach ((string name, JsonNode? definition) in definitions.Where(d => Unit(d.Value!) is null && !d.Key.EndsWith(Part, StringComparison.Ordinal) && isShown(d.Key)))
        {
            page.Append(null, $"\n## {name}\n\n{definition!["description"]}\n");
            if (Start(definition, definitions) is { } start)
                page.Append(null, $"\n`{StartKey}`: {start["description"]}\n");
            JsonNode whole = definition["else"] ?? definition;
            JsonArray cases = (whole["oneOf"] ?? whole["anyOf"]) as JsonArray ?? [whole.DeepClone()];
            foreach (JsonNode? at in cases.Where(c => c!["properties"] is not null))
                Append(page, at!.AsObject());
        }
    }

    /// <summary>What the schema says of the key that names a starting set; null where there is none.</summary>
    private static JsonNode? Start(JsonNode definition, JsonObject definitions)
    {
        if (definition["then"] is not { } then)
            return null;
        JsonNode part = definitions[((string)then["$ref"]!).Split('/')[^1]]!;
        return ((part["anyOf"] as JsonArray)?[0] ?? part)["properties"]![StartKey];
    }

    private static void AppendSets(StringBuilder page)
    {
        page.Append("\n## Starting sets\n\nAll are invented, judged or recalled, as their sources say. An object that names one says beside it only what differs.\n");
        foreach (IStartingSets sets in PlanCodecs.Starting)
        {
            foreach ((string name, string meaning, JsonObject whole) in sets.All)
                page.Append(null, $"\n### `{name}`, {sets.Of}\n\n{meaning}\n\n```json\n{JsonLayout.Of(whole)}```\n");
        }
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
            "object" => "objects by name, each a part of " + Link((string)value["additionalProperties"]!["$ref"]!),
            _ => "text",
        };
    }

    private static string Link(string reference) => reference[(reference.LastIndexOf('/') + 1)..].Replace(Part, "", StringComparison.Ordinal).Replace('-', ' ');

    private static string Range(JsonNode value) => value["maximum"] is { } most
        ? $", {value["minimum"] ?? value["exclusiveMinimum"]} to {most}"
        : "";

    private static IEnumerable<string>? Unit(JsonNode definition) =>
        ((definition["anyOf"] as JsonArray)?[1]?["properties"]?["unit"]?["enum"] as JsonArray)?.Select(u => (string)u!);
}
