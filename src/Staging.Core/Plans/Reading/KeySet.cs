using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Staging.Core.Plans.Reading;

/// <summary>The keys of one JSON object, each known and there once. Strict: every other key is a problem.</summary>
internal sealed class KeySet
{
    private readonly JsonCursor place;
    private readonly Dictionary<string, JsonCursor> found;

    private KeySet(JsonCursor place, Dictionary<string, JsonCursor> found) => (this.place, this.found) = (place, found);

    /// <summary>
    /// Reads the keys of an object and of what it starts from; reports unknown and repeated ones.
    /// </summary>
    /// <param name="place">The object.</param>
    /// <param name="known">The keys that may stand there.</param>
    /// <param name="keys">The known keys that do stand there.</param>
    /// <returns>Whether no key was unknown or repeated.</returns>
    public static bool TryRead(JsonCursor place, ImmutableArray<string> known, out KeySet keys)
    {
        bool clean = true;
        Dictionary<string, JsonCursor> found = new(StringComparer.Ordinal), below = [];
        if (place.Basis is { } basis)
        {
            clean = TryRead(basis, known, out KeySet under);
            below = under.found;
        }

        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in place.Element.EnumerateObject())
        {
            string? key = JsonCursor.NameOf(property);
            string? wrong = key is null ? "a key holds half a surrogate pair; it is not Unicode."
                : !seen.Add(key) ? "the key stands here more than once."
                : !known.Contains(key) ? Spelling.NotOneOf("key", key, known)
                : null;
            if (wrong is null)
                found.Add(key!, place.Under(key!, property.Value, below.GetValueOrDefault(key!)));
            else
                (key is null ? place : place.Under(key)).Report(wrong);
            clean &= wrong is null;
        }

        foreach ((string key, JsonCursor value) in below)
            found.TryAdd(key, value.SeenFrom(place));
        keys = new KeySet(place, found);
        return clean;
    }

    /// <summary>Whether a key is there.</summary>
    public bool Has(string key) => found.ContainsKey(key);

    /// <summary>The place of a key; reports when it is missing, unless the object need not be complete.</summary>
    /// <param name="key">The key.</param>
    /// <param name="wanted">What is wanted there, in words.</param>
    /// <param name="at">The place.</param>
    public bool TryGet(string key, string wanted, [NotNullWhen(true)] out JsonCursor? at)
    {
        if (found.TryGetValue(key, out at))
            return true;
        if (!place.Reading.InPart)
            place.Under(key).Report($"the key is missing; wanted: {wanted}");
        return false;
    }
}
