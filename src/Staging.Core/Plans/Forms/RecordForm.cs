using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Forms;

/// <summary>A record as a JSON object: its keys, and how it is made from their values. The rules of values are those of the record itself.</summary>
internal sealed class RecordForm<T> : Form<T>
    where T : notnull
{
    private readonly ImmutableArray<KeyForm<T>> keys;
    private readonly Func<object?[], T> make;
    private object? sample;

    /// <summary>Describes a record.</summary>
    /// <param name="name">What it is, in words.</param>
    /// <param name="describe">Names the keys and returns how to make the record.</param>
    public RecordForm(string name, Func<RecordKeys<T>, Func<object?[], T>> describe)
    {
        var described = new RecordKeys<T>();
        Name = name;
        make = describe(described);
        keys = described.All;
    }

    /// <summary>What it is, in words.</summary>
    public string Name { get; }

    /// <inheritdoc/>
    public override T Sample => (T)(sample ??= MakeSample());

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, out T value) => TryRead(place, [], out value);

    /// <summary>Reads the record from an object that holds further keys, which somebody else has read.</summary>
    public bool TryRead(JsonPlace place, ImmutableArray<string> others, out T value)
    {
        value = default!;
        if (!place.IsOf(JsonValueKind.Object, $"an object ({Name})"))
            return false;
        bool good = KeySet.TryRead(place, [.. others, .. keys.Select(k => k.Name)], out KeySet found);
        var values = new object?[keys.Length];
        var read = new JsonPlace?[keys.Length];
        for (int i = 0; i < keys.Length; i++)
        {
            KeyForm<T> key = keys[i];
            values[i] = key.Otherwise;
            if (!found.Has(key.Name) && !key.Needed)
                continue;
            bool there = found.TryGet(key.Name, $"it is needed in a {Name}.", out JsonPlace? at) && key.TryRead(at, out values[i]);
            read[i] = there ? at : null;
            good &= there;
        }

        return TryMake(values, (i, message) => Report(place, i < 0 ? place : read[i], message), out value) && good;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value)
    {
        writer.WriteStartObject();
        WriteKeys(writer, value);
        writer.WriteEndObject();
    }

    /// <summary>Writes keys and values without the braces.</summary>
    public void WriteKeys(Utf8JsonWriter writer, T value)
    {
        foreach (KeyForm<T> key in keys)
            key.Write(writer, value);
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference(Name, () => ObjectSchema(definitions, null));

    /// <summary>The schema of the object, with the tag of a union in front where there is one.</summary>
    public JsonObject ObjectSchema(SchemaDefinitions definitions, string? kind)
    {
        var properties = new JsonObject();
        IEnumerable<string> needed = keys.Where(k => k.Needed).Select(k => k.Name);
        if (kind is not null)
        {
            properties.Add(KindKey.Name, new JsonObject { ["const"] = kind });
            needed = needed.Prepend(KindKey.Name);
        }

        foreach (KeyForm<T> key in keys)
            properties.Add(key.Name, key.Schema(definitions));
        return new JsonObject
        {
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = SchemaDefinitions.Texts(needed),
            ["additionalProperties"] = false,
        };
    }

    private static void Report(JsonPlace owner, JsonPlace? at, string message)
    {
        // A refusal of a stand-in for something unread says nothing about the text, unless nothing else was said.
        if (at is not null)
            at.Report(message);
        else if (owner.Reading.Problems.Count == 0)
            owner.Report(message);
    }

    /// <summary>Makes the record; a refused number is reported and moved inside its range, so that the next refusal shows as well.</summary>
    private bool TryMake(object?[] values, Action<int, string> report, out T made)
    {
        bool clean = true;
        for (int attempt = 0; attempt <= keys.Length; attempt++)
        {
            try
            {
                made = make(values);
                return clean;
            }
            catch (ArgumentException refusal)
            {
                clean = false;
                int index = IndexOf(refusal.ParamName);
                AcceptedRange? range = AcceptedRange.Of(refusal);
                string? inWords = index >= 0 && range is not null ? keys[index].Refusal(range, values[index]) : null;
                report(index, inWords ?? Plain(refusal));
                if (inWords is null || keys[index].Inside(range!) is not { } inside)
                    break;
                values[index] = inside;
            }
        }

        made = default!;
        return false;
    }

    private object MakeSample() => TryMake([.. keys.Select(k => k.Otherwise)], static (_, _) => { }, out T made) || made is not null
        ? made
        : throw new InvalidOperationException($"No sample of a {Name} could be made.");

    private int IndexOf(string? property)
    {
        for (int i = 0; property is not null && i < keys.Length; i++)
        {
            if (string.Equals(keys[i].Name, property, StringComparison.OrdinalIgnoreCase))
                return i;
        }

        return -1;
    }

    /// <summary>The message without what the runtime adds about the parameter.</summary>
    private static string Plain(ArgumentException refusal)
    {
        int added = refusal.Message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        return added < 0 ? refusal.Message : refusal.Message[..added];
    }
}
