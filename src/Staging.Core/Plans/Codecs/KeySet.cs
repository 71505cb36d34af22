using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Staging.Core.Plans.Codecs;

/// <summary>The keys of one JSON object, each known and there once. Strict: every other key is a problem.</summary>
internal sealed class KeySet
{
    private readonly JsonCursor place;
    private readonly Dictionary<string, JsonElement> found;

    private KeySet(JsonCursor place, Dictionary<string, JsonElement> found) => (this.place, this.found) = (place, found);

    /// <summary>Reads the keys of an object; reports unknown and repeated ones.</summary>
    /// <param name="place">The object.</param>
    /// <param name="known">The keys that may stand there.</param>
    /// <param name="keys">The known keys that do stand there.</param>
    /// <returns>Whether no key was unknown or repeated.</returns>
    public static bool TryRead(JsonCursor place, ImmutableArray<string> known, out KeySet keys)
    {
        var found = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        bool clean = true;
        foreach (JsonProperty property in place.Element.EnumerateObject())
        {
            string? key = JsonCursor.NameOf(property);
            string? wrong = key is null ? "a key holds half a surrogate pair; it is not Unicode."
                : !seen.Add(key) ? "the key stands here more than once."
                : !known.Contains(key) ? Spelling.NotOneOf("key", key, known)
                : null;
            if (wrong is null)
                found.Add(key!, property.Value);
            else
                (key is null ? place : place.Under(key)).Report(wrong);
            clean &= wrong is null;
        }

        keys = new KeySet(place, found);
        return clean;
    }

    /// <summary>Whether a key is there.</summary>
    public bool Has(string key) => found.ContainsKey(key);

    /// <summary>The place of a key; reports when it is missing.</summary>
    /// <param name="key">The key.</param>
    /// <param name="wanted">What is wanted there, in words.</param>
    /// <param name="at">The place.</param>
    public bool TryGet(string key, string wanted, [NotNullWhen(true)] out JsonCursor? at)
    {
        bool there = found.TryGetValue(key, out JsonElement element);
        at = there ? place.Under(key, element) : null;
        if (!there)
            place.Under(key).Report($"the key is missing; wanted: {wanted}");
        return there;
    }
}
