using System.Text.Json;
using System.Text.RegularExpressions;

namespace Staging.Core.Tests.Reviews;

/// <summary>
/// The page that lists the keys of a review and of odds as JSON: below a heading that names one or more objects by their path, a table of
/// their keys and what each is.
/// </summary>
internal sealed partial class KeyTable
{
    private readonly Dictionary<string, Row> rows = [];
    private readonly HashSet<Row> seen = [];
    private readonly HashSet<string> wrong = [];

    public KeyTable(string page)
    {
        string[] objects = [];
        foreach (string line in page.Split('\n'))
        {
            if (line.StartsWith('#'))
                objects = [.. Word().Matches(line).Select(m => m.Groups[1].Value)];
            else if (KeyRow().Match(line) is { Success: true } match)
                Add(objects, new Row(match.Groups["key"].Value, match.Groups["is"].Value));
        }
    }

    /// <summary>What does not stand on the page, or is not what the page says.</summary>
    public IEnumerable<string> Wrong => wrong.Order(StringComparer.Ordinal);

    /// <summary>Rows that no value was seen of.</summary>
    public IEnumerable<string> NotSeen => rows.Where(r => !seen.Contains(r.Value)).Select(r => r.Key);

    /// <summary>The rows that list words, by path, each with its words.</summary>
    public IEnumerable<(string Path, string[] Words)> Words =>
        rows.Where(r => r.Value.Words.Length > 0).Select(r => (r.Key, r.Value.Words));

    /// <summary>Compares a value and all within it with the page.</summary>
    public void Look(JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Array)
        {
            foreach (JsonElement item in value.EnumerateArray())
                Look(item, path + "[]");
        }
        else if (value.ValueKind == JsonValueKind.Object)
        {
            foreach (JsonProperty property in value.EnumerateObject())
                Look(property, $"{path}.{property.Name}");
        }
    }

    private void Look(JsonProperty property, string path)
    {
        if (!rows.TryGetValue(path, out Row? row))
        {
            wrong.Add($"{path} does not stand on the page");
            return;
        }

        seen.Add(row);
        if (!row.Fits(property.Value))
            wrong.Add($"{path} is {property.Value.GetRawText()}, and the page says: {row.Is}");
        Look(property.Value, path);
    }

    private void Add(string[] objects, Row row)
    {
        foreach (string path in objects)
        {
            if (!rows.TryAdd($"{path}.{row.Key}", row))
                wrong.Add($"{path}.{row.Key} stands twice on the page");
        }
    }

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Word();

    [GeneratedRegex(@"^\| `(?<key>\w+)` \| (?<is>[^|]+) \|")]
    private static partial Regex KeyRow();

    private sealed class Row(string key, string what)
    {
        private readonly bool mayBeNull = what.EndsWith("or null", StringComparison.Ordinal);

        public string Key { get; } = key;

        public string Is { get; } = what;

        public string[] Words { get; } = [.. Word().Matches(what).Select(m => m.Groups[1].Value)];

        public bool Fits(JsonElement value) => value.ValueKind == JsonValueKind.Null ? mayBeNull : FitsKind(value);

        private bool FitsKind(JsonElement value) => Is.Split(" or null")[0].TrimEnd(',') switch
        {
            "text" => value.ValueKind == JsonValueKind.String,
            "number" => value.ValueKind == JsonValueKind.Number,
            "count" => value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out _),
            "true or false" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
            "object" => value.ValueKind == JsonValueKind.Object,
            "list of objects" => IsListOf(value, JsonValueKind.Object),
            "list of texts" => IsListOf(value, JsonValueKind.String),
            "list of numbers" => IsListOf(value, JsonValueKind.Number),
            _ => Words.Length > 0 && value.ValueKind == JsonValueKind.String && Words.Contains(value.GetString()),
        };

        private static bool IsListOf(JsonElement value, JsonValueKind kind) =>
            value.ValueKind == JsonValueKind.Array && value.EnumerateArray().All(item => item.ValueKind == kind);
    }
}
