using System.Text.Json.Nodes;

namespace Staging.Core.Tests.Plans;

/// <summary>Spoils the text of a plan, the same way for the same seed.</summary>
internal static class Damage
{
    private static readonly string[] Values =
        ["null", "true", "0", "-1", "1.5", "1e999", "-1e-320", "1e308", "\"\"", "\" \"", "\"mm\"", "\"\\ud800\"", "[]", "[0]", "[1,1]", "{}", "{\"kind\":\"uniform\"}", "{\"value\":1,\"unit\":\"m\"}"];

    private static readonly string[] Scraps = ["", "\"", "{", "}", "[", "]", ",", ":", "\\", "\0", "\ud800", "\u00e9", "-", "1e", "NaN", "/*x*/", "//x\n", "\"kind\":", "\\ud800"];

    /// <summary>Overwrites up to five characters somewhere, one to three times: mostly no JSON any more.</summary>
    public static string ToText(string json, int seed)
    {
        var dice = new Dice(seed);
        for (int n = 1 + dice.Below(3); n > 0; n--)
        {
            int at = dice.Below(json.Length), length = Math.Min(dice.Below(6), json.Length - at);
            json = json[..at] + dice.Of(Scraps) + json[(at + length)..];
        }

        return dice.Below(20) == 0 ? json[..dice.Below(json.Length + 1)] : json;
    }

    /// <summary>Puts some other value in the place of one: JSON as before, perhaps even a plan.</summary>
    public static string ToValue(string json, int seed)
    {
        var dice = new Dice(seed);
        JsonNode root = JsonNode.Parse(json)!;
        List<JsonNode> places = [.. Below(root)];
        JsonNode place = places[dice.Below(places.Count)];
        const string Mark = "-- here --";
        place.ReplaceWith(Mark);
        return root.ToJsonString().Replace($"\"{Mark}\"", dice.Of(Values), StringComparison.Ordinal);
    }

    /// <summary>Spoils keys, kinds, words or units, so that no plan can have this shape.</summary>
    public static string ToShape(string json, int seed)
    {
        var dice = new Dice(seed);
        JsonNode root = JsonNode.Parse(json)!;
        List<JsonNode> places = [.. Below(root)];
        JsonObject[] objects = [root.AsObject(), .. places.OfType<JsonObject>()];
        JsonObject chosen = objects[dice.Below(objects.Length)];
        JsonValue[] words = [.. places.OfType<JsonValue>().Where(p => p.Parent is JsonObject && p.GetPropertyName() is "kind" or "unit" or "how" or "drills" or "from")];
        switch (dice.Below(5))
        {
            case 0:
                chosen.Add("remark", "not a key of a plan");
                break;
            case 1:
                places[dice.Below(places.Count)].ReplaceWith((JsonNode?)null);
                break;
            case 2 when words.Length > 0:
                words[dice.Below(words.Length)].ReplaceWith("nonsense");
                break;
            case 3:
                chosen.ReplaceOrRename("name", "nmae");
                break;
            default:
                places[dice.Below(places.Count)].ReplaceWith(true);
                break;
        }

        return root.ToJsonString();
    }

    private static IEnumerable<JsonNode> Below(JsonNode node)
    {
        IEnumerable<JsonNode> children = node switch
        {
            JsonObject o => o.Select(p => p.Value!),
            JsonArray a => a.Select(i => i!),
            _ => [],
        };
        return children.SelectMany(c => Below(c).Prepend(c));
    }

    private static void ReplaceOrRename(this JsonObject at, string key, string instead)
    {
        if (at.Remove(key, out JsonNode? value))
            at.Add(instead, value);
        else
            at.Add(instead, 1);
    }

    /// <summary>A small generator, so that a seed is a case (Numerical Recipes' 64-bit linear congruence, high bits).</summary>
    private sealed class Dice(int seed)
    {
        private ulong state = (ulong)(uint)seed * 2862933555777941757UL + 3037000493UL;

        public int Below(int count)
        {
            state = state * 6364136223846793005UL + 1442695040888963407UL;
            return (int)((state >> 33) % (ulong)count);
        }

        public string Of(string[] list) => list[Below(list.Length)];
    }
}
