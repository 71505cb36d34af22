using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Staging.Core.Plans.Reading;

/// <summary>The keys of one JSON object, each known and there once. Strict: every other key is a problem.</summary>
internal sealed class KeySet
{
    private readonly JsonCursor place;
    private readonly Dictionary<string, JsonCursor> found = new(StringComparer.Ordinal);
    private readonly HashSet<string> misspelt = new(StringComparer.Ordinal);

    private KeySet(JsonCursor place) => this.place = place;

    /// <summary>
    /// Reads the keys of an object and of what it starts from; reports unknown and repeated ones.
    /// </summary>
    /// <param name="place">The object.</param>
    /// <param name="known">The keys that may stand there.</param>
    /// <param name="required">Those of them that must.</param>
    /// <param name="keys">The known keys that do stand there.</param>
    /// <returns>Whether no key was unknown or repeated.</returns>
    public static bool TryRead(JsonCursor place, ImmutableArray<string> known, ImmutableArray<string> required, out KeySet keys)
    {
        bool clean = true;
        KeySet? below = null;
        if (place.Basis is { } basis)
            clean = TryRead(basis, known, required, out below);

        keys = new KeySet(place);
        keys.misspelt.UnionWith(below?.misspelt ?? []);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in place.Element.EnumerateObject())
        {
            string? key = JsonCursor.NameOf(property);
            string? wrong = key is null ? "a key holds half a surrogate pair; it is not Unicode."
                : !seen.Add(key) ? "the key stands here more than once."
                : !known.Contains(key) ? keys.Misspelt(key, known, required)
                : null;
            if (wrong is null)
                keys.found.Add(key!, place.Under(key!, property.Value, below?.found.GetValueOrDefault(key!)));
            else
                (key is null ? place : place.Under(key)).Report(wrong);
            clean &= wrong is null;
        }

        foreach ((string key, JsonCursor value) in below?.found ?? [])
            keys.found.TryAdd(key, value.SeenFrom(place));
        return clean;
    }

    /// <summary>Whether a key is there.</summary>
    public bool Has(string key) => found.ContainsKey(key);

    /// <summary>
    /// The place of a key; reports when it is missing, unless the object need not be complete or has it misspelt.
    /// </summary>
    /// <param name="key">The key.</param>
    /// <param name="wanted">What is wanted there, in words.</param>
    /// <param name="at">The place.</param>
    public bool TryGet(string key, string wanted, [NotNullWhen(true)] out JsonCursor? at)
    {
        if (found.TryGetValue(key, out at))
            return true;
        if (!place.Reading.InPart && !misspelt.Contains(key))
            place.Under(key).Report($"the key is missing; wanted: {wanted}");
        return false;
    }

    /// <summary>What is wrong with an unknown key; the missing one that it is meant to be is not told again.</summary>
    private string Misspelt(string key, ImmutableArray<string> known, ImmutableArray<string> required)
    {
        if (Spelling.Nearest(key, known) is { } meant)
            misspelt.Add(meant);
        return Spelling.NotOneOf("key", key, known, required.Where(k => !place.Has(k, out _)));
    }
}
