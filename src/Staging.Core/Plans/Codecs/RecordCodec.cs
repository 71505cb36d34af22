using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A record as a JSON object: its keys in order, and how their values are joined to the record.</summary>
/// <remarks>
/// The joining is an object initialiser, so the compiler sees to it that no required property is forgotten. The ranges
/// are not repeated here: the record itself is asked for them (see <see cref="AcceptedRanges{T}"/>).
/// </remarks>
internal sealed class RecordCodec<T> : Codec<T>, IRecordCodec
{
    private readonly string name;
    private readonly string description;
    private readonly ImmutableArray<Field<T>> fields;
    private readonly ImmutableArray<string> keys;
    private readonly ImmutableArray<string> required;
    private readonly Func<FieldValues, T> join;
    private readonly Lazy<AcceptedRanges<T>> ranges;

    /// <summary>Describes a record.</summary>
    /// <param name="name">Name of its definition in the schema.</param>
    /// <param name="description">What it is, in words.</param>
    /// <param name="layout">Lists the keys and returns the function that joins their values.</param>
    public RecordCodec(string name, string description, Func<FieldList<T>, Func<FieldValues, T>> layout)
    {
        (this.name, this.description) = (name, description);
        var list = new FieldList<T>();
        join = layout(list);
        fields = list.All;
        keys = [.. fields.Select(f => f.Key)];
        required = [.. fields.Where(f => f.Required).Select(f => f.Key)];
        ranges = new Lazy<AcceptedRanges<T>>(() => AcceptedRanges<T>.Ask(fields, list.AskedForRanges ?? (v => join(v)!), join));
    }

    /// <summary>The sets of the library from which such an object may start, in words what they are of.</summary>
    public (string Of, ImmutableArray<StartingSet<T>> Sets) StartsFrom
    {
        init => Starts = new(value.Of, false, value.Sets, v => WriteWhole(v, WriteContext.Brief.Whole));
    }

    /// <summary>The same where the plan may have sets of its own.</summary>
    public (string Of, ImmutableArray<StartingSet<T>> Sets) StartsFromOwn
    {
        init => Starts = new(value.Of, true, value.Sets, v => WriteWhole(v, WriteContext.Brief.Whole));
    }

    /// <summary>From what such an object may start; null where it says everything itself.</summary>
    public StartingSets<T>? Starts { get; private init; }

    /// <inheritdoc/>
    public override T Sample => ranges.Value.Sample;

    /// <inheritdoc/>
    public Type Record => typeof(T);

    /// <inheritdoc/>
    public ImmutableArray<KeyDescription> Facts =>
        [.. fields.Select((f, i) => new KeyDescription(f.Key, f.Property, f.Description, f.Required, f.BaseUnit, ranges.Value.Range[i]))];

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [MaybeNullWhen(false)] out T value) => TryRead(place, [], out value);

    /// <summary>Reads the record from an object that may also hold keys of the union it belongs to.</summary>
    public bool TryRead(JsonCursor place, ImmutableArray<string> besides, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (!place.IsOf(JsonValueKind.Object, "an object"))
            return false;
        int before = place.Reading.Reported;
        if (Starts is not null)
        {
            if (Starts.Resolve(place) is not { } resolved)
                return false;
            place = resolved;
        }

        KeySet.TryRead(place, KnownWith(besides), required, out KeySet found);
        var values = new FieldValues(fields.Length);
        for (int i = 0; i < fields.Length; i++)
            fields[i].Read(found, ranges.Value.Range[i], values);
        return !place.Reading.InPart && place.Reading.Reported == before && TryJoin(place, values, out value);
    }

    /// <inheritdoc/>
    public override JsonNode Write(T value, WriteContext context)
    {
        JsonNode whole = WriteWhole(value, context);
        return Starts is not null && context.UsesSets ? Starts.Shortest(value, whole, context) : whole;
    }

    /// <summary>Adds the keys and values to an object.</summary>
    public void WriteFields(JsonObject target, T value, WriteContext context)
    {
        foreach (Field<T> field in fields)
            field.Write(target, value, context);
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) =>
        definitions.Record(name, description, Starts is not null, () => SchemaOfObject(null, definitions, Starts?.Schema()));

    /// <summary>The schema of the object itself, with the word that names its kind where it has one.</summary>
    public JsonObject SchemaOfObject(KeyValuePair<string, string>? kind, SchemaDefinitions definitions, JsonObject? start = null)
    {
        var properties = new JsonObject();
        if (start is not null && definitions.InPart)
            properties[JsonCursor.StartKey] = start;
        if (kind is { } k)
            properties[k.Key] = new JsonObject { ["const"] = k.Value };

        for (int i = 0; i < fields.Length; i++)
            properties[keys[i]] = fields[i].Schema(ranges.Value.Range[i], definitions);

        return new JsonObject
        {
            ["description"] = description,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = SchemaDefinitions.Texts(definitions.InPart ? [] : kind is null ? required : [kind.Value.Key, .. required]),
            ["additionalProperties"] = false,
        };
    }

    private JsonObject WriteWhole(T value, WriteContext context)
    {
        var whole = new JsonObject();
        WriteFields(whole, value, context);
        return whole;
    }

    private ImmutableArray<string> KnownWith(ImmutableArray<string> besides) =>
        Starts is null ? [.. besides, .. keys] : [.. besides, JsonCursor.StartKey, .. keys];

    /// <summary>
    /// Joins the values; what the record still refuses (columns that do not fit each other) is reported where it
    /// belongs.
    /// </summary>
    private bool TryJoin(JsonCursor place, FieldValues values, [MaybeNullWhen(false)] out T value)
    {
        try
        {
            value = join(values);
            return true;
        }
        catch (ArgumentException refusal)
        {
            value = default;
            Field<T>? field = fields.FirstOrDefault(f => f.IsNamed(refusal.ParamName));
            (field is null ? place : place.Under(field.Key)).Report(Guard.MessageOf(refusal));
            return false;
        }
    }
}
