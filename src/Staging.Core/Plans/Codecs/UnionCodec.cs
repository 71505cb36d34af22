using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>One of several records, told apart by the key <c>kind</c>, which comes first.</summary>
internal sealed class UnionCodec<T>(string name, string description, ImmutableArray<UnionCase<T>> cases) : Codec<T>
    where T : class
{
    private const string KindKey = "kind";

    private readonly ImmutableArray<string> kinds = [.. cases.Select(c => c.Kind)];

    /// <summary>The sets of the library from which such an object may start, in words what they are of.</summary>
    public (string Of, ImmutableArray<StartingSet<T>> Sets) StartsFrom
    {
        init => Starts = new(value.Of, false, value.Sets, v => WriteWhole(v, WriteContext.Brief.Whole));
    }

    /// <summary>From what such an object may start; null where it says everything itself.</summary>
    public StartingSets<T>? Starts { get; private init; }

    /// <inheritdoc/>
    public override T Sample => cases[0].Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out T? value)
    {
        value = null;
        if (!place.IsOf(JsonValueKind.Object, "an object"))
            return false;
        if (Starts is not null)
        {
            if (Starts.Resolve(place) is not { } resolved)
                return false;
            place = resolved;
        }

        place = place.OfOneKind(KindKey);
        if (!place.Has(KindKey, out JsonCursor? kindPlace))
        {
            if (Misspelt(place) is { } key)
                place.Under(key).Report($"'{Excerpt.Of(key)}' is not a known key here; did you mean '{KindKey}', which is missing?");
            else if (!place.Reading.InPart)
                place.Under(KindKey).Report($"the key is missing; wanted: one of {string.Join(", ", kinds)}.");
            return false;
        }

        if (!kindPlace.TryText(out string? kind))
            return false;
        int known = kinds.IndexOf(kind);
        if (known >= 0)
            return cases[known].TryRead(place, Starts is null ? [KindKey] : [JsonCursor.StartKey, KindKey], out value);
        kindPlace.Report(Spelling.NotOneOf("kind", kind, kinds));
        return false;
    }

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The value is of a type that a plan has no words for.</exception>
    public override JsonNode Write(T value, WriteContext context)
    {
        JsonNode whole = WriteWhole(value, context);
        return Starts is not null && context.UsesSets ? Starts.Shortest(value, whole, context) : whole;
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Record(name, description, Starts is not null, () =>
        new JsonObject
        {
            ["description"] = description,
            [definitions.InPart ? "anyOf" : "oneOf"] =
                new JsonArray([.. cases.Select(c => c.Schema(KindKey, definitions, Starts?.Schema()))]),
        });

    /// <summary>A key of another name that holds a kind, and is but a letter away.</summary>
    private string? Misspelt(JsonCursor place) => place.Element.EnumerateObject()
        .Where(property => property.Value.ValueKind == JsonValueKind.String && kinds.Any(property.Value.ValueEquals))
        .Select(JsonCursor.NameOf)
        .FirstOrDefault(key => key is not null && Spelling.Nearest(key, [KindKey]) is not null);

    private JsonObject WriteWhole(T value, WriteContext context)
    {
        UnionCase<T> at = cases.FirstOrDefault(c => c.Holds(value))
            ?? throw new ArgumentException($"A {description.ToLowerInvariant().TrimEnd('.')} of type {value.GetType().Name} has no codec "
                + $"in JSON; there are {string.Join(", ", kinds)}.", nameof(value));
        var whole = new JsonObject { [KindKey] = at.Kind };
        at.WriteFields(whole, value, context);
        return whole;
    }
}
