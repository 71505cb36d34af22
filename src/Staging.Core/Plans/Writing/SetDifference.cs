using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;

namespace Staging.Core.Plans.Writing;

/// <summary>What an object says differently from a starting set.</summary>
internal static class SetDifference
{
    private const string KindKey = "kind";

    /// <summary>The object that names the set and says what differs; null where that cannot be said.</summary>
    /// <param name="whole">The object in full.</param>
    /// <param name="short">The same object, whose parts may start from sets; null where it itself does.</param>
    /// <param name="set">The set in full.</param>
    /// <param name="name">Its name.</param>
    public static JsonObject? Of(JsonObject whole, JsonObject? @short, JsonObject set, string name)
    {
        if (Beside(whole, @short, set) is not { } difference)
            return null;
        difference.Insert(0, JsonCursor.StartKey, name);
        return difference;
    }

    private static JsonObject? Beside(JsonObject whole, JsonObject? @short, JsonObject set)
    {
        // A key cannot be taken away from a set, and an object of another kind replaces it.
        if (!JsonNode.DeepEquals(whole[KindKey], set[KindKey]) || set.Any(s => !whole.ContainsKey(s.Key)))
            return null;
        var difference = new JsonObject();
        foreach ((string key, JsonNode? value) in whole)
        {
            JsonNode? below = set[key];
            if (JsonNode.DeepEquals(value, below))
                continue;
            JsonNode? own = @short?[key];
            JsonNode? said = value is JsonObject part && below is JsonObject under ? Part(part, own as JsonObject, under) : own ?? value;
            if (said is null)
                return null;
            difference.Add(key, said.DeepClone());
        }

        return difference;
    }

    /// <summary>
    /// A part: what differs, or the part with a set of its own, or all of it where its kind is another.
    /// </summary>
    private static JsonObject? Part(JsonObject whole, JsonObject? @short, JsonObject set)
    {
        bool hasOwnSet = @short?.ContainsKey(JsonCursor.StartKey) == true;
        JsonObject? difference = Beside(whole, hasOwnSet ? null : @short, set);
        bool isOther = !JsonNode.DeepEquals(whole[KindKey], set[KindKey]);
        JsonObject? replaced = hasOwnSet ? @short : isOther ? @short ?? whole : null;
        if (difference is null || replaced is null)
            return difference ?? replaced;
        return JsonLayout.LengthOf(replaced) < JsonLayout.LengthOf(difference) ? replaced : difference;
    }
}
