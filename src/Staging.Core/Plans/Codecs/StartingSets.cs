using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// The sets from which objects of one kind may start: those of the library, and for a gap those at the top of the plan.
/// </summary>
/// <param name="of">The kind, in words.</param>
/// <param name="takesOwn">Whether the plan may have sets of its own of this kind.</param>
/// <param name="sets">Those of the library.</param>
/// <param name="write">Writes one in full.</param>
internal sealed class StartingSets<T>(string of, bool takesOwn, ImmutableArray<StartingSet<T>> sets, Func<T, JsonNode> write)
    : IStartingSets
{
    private readonly Lazy<ImmutableArray<(string, string, JsonObject)>> whole =
        new(() => [.. sets.Select(s => (s.Name, s.Meaning, write(s.Make()).AsObject()))]);

    private readonly Lazy<ImmutableDictionary<string, JsonElement>> parsed = new(() =>
        sets.ToImmutableDictionary(s => s.Name, s => Parsed(write(s.Make()))));

    /// <inheritdoc/>
    public string Of => of;

    /// <inheritdoc/>
    public ImmutableArray<(string Name, string Meaning, JsonObject Whole)> All => whole.Value;

    /// <summary>
    /// The object with the one it starts from as its basis; null, and a report, where there is no such set.
    /// </summary>
    public JsonCursor? Resolve(JsonCursor place) => Resolve(place, []);

    /// <summary>
    /// The shorter of an object in full and the same object as what differs from one of the sets.
    /// </summary>
    /// <param name="value">The value.</param>
    /// <param name="best">It as written so far: its parts may start from sets.</param>
    /// <param name="context">The sets of the plan.</param>
    public JsonNode Shortest(T value, JsonNode best, WriteContext context)
    {
        JsonObject plain = write(value).AsObject();
        var own = takesOwn ? context.OwnGaps : [];
        JsonNode shortest = best;
        foreach ((string name, JsonObject set) in own.Concat(All.Select(s => (s.Name, s.Whole))))
        {
            if (SetDifference.Of(plain, best as JsonObject, set, name) is { } candidate
                && JsonLayout.LengthOf(candidate) < JsonLayout.LengthOf(shortest))
                shortest = candidate;
        }

        return shortest;
    }

    /// <summary>What the schema says of the key that names a set.</summary>
    public JsonObject Schema()
    {
        string names = string.Join(", ", sets.Select(s => s.Name));
        JsonObject schema = takesOwn
            ? new JsonObject { ["type"] = "string" }
            : new JsonObject { ["enum"] = SchemaDefinitions.Texts(sets.Select(s => s.Name)) };
        schema["description"] = $"Starting set; what differs from it stands beside this key. There is {names}"
            + (takesOwn ? ", and what stands under gaps at the top of the plan." : ".");
        return schema;
    }

    private JsonCursor? Resolve(JsonCursor place, ImmutableArray<string> trail)
    {
        if (place.Element.ValueKind != JsonValueKind.Object)
            return place;
        if (!place.HasOwn(JsonCursor.StartKey, out JsonCursor? start))
            return place.Basis is not { } below ? place : Resolve(below, trail) is { } basis ? place.On(basis) : null;
        if (!start.TryText(out string? name))
            return null;
        JsonCursor? own = takesOwn ? place.Reading.OwnGaps?.Find(name) : null;
        if (own is not null && trail.Contains(name))
            start.Report($"the gap starts from itself: {string.Join(", from ", Circle(trail, name))}.");
        else if (trail.Length >= InputLimits.MaxSets)
            start.Report($"more than {InputLimits.MaxSets} starting sets stand one upon the other.");
        else if (own is not null)
            return Resolve(own, trail.Add(name)) is { } basis ? place.On(basis) : null;
        else if (parsed.Value.TryGetValue(name, out JsonElement element))
            return place.On(JsonCursor.Root(element, place.Reading, name));
        else
            start.Report(Spelling.NotOneOf("starting set", name, Known(place.Reading)));
        return null;
    }

    private static JsonElement Parsed(JsonNode node)
    {
        using JsonDocument document = JsonDocument.Parse(node.ToJsonString());
        return document.RootElement.Clone();
    }

    private static IEnumerable<string> Circle(ImmutableArray<string> trail, string name) =>
        trail.SkipWhile(t => t != name).Append(name).Select(n => Excerpt.Of(n));

    private ImmutableArray<string> Known(ReadContext reading) =>
        [.. takesOwn ? reading.OwnGaps?.NamesInShort() ?? [] : [], .. sets.Select(s => s.Name)];
}
