using System.Text.Json;

namespace Staging.Core.Plans.Reading;

/// <summary>
/// The sets at the top of a plan, each found by its name without a look at the others: a plan may hold many.
/// </summary>
internal sealed class OwnSets
{
    private readonly JsonCursor place;
    private readonly Dictionary<string, JsonElement> sets = new(StringComparer.Ordinal);

    /// <param name="place">The object that holds them; anything else holds none.</param>
    public OwnSets(JsonCursor place)
    {
        this.place = place;
        if (place.Element.ValueKind != JsonValueKind.Object)
            return;
        foreach (JsonProperty set in place.Element.EnumerateObject())
        {
            if (JsonCursor.NameOf(set) is { } name)
                sets[name] = set.Value;
        }
    }

    /// <summary>The place of a set; null where there is none of this name.</summary>
    public JsonCursor? Find(string name) => sets.TryGetValue(name, out JsonElement set) ? place.Under(name, set) : null;

    /// <summary>The first of their names, each cut short, to be listed in a message.</summary>
    public IEnumerable<string> NamesInShort()
    {
        const int Most = 20;
        return place.Element.ValueKind == JsonValueKind.Object
            ? place.Element.EnumerateObject().Select(JsonCursor.NameOf).OfType<string>().Take(Most).Select(n => Excerpt.Of(n))
            : [];
    }
}
