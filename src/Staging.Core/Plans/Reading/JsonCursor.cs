using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Staging.Core.Plans.Reading;

/// <summary>
/// One place in a JSON text: the value that stands there and the way to it. Problems are reported to the place they
/// belong to.
/// </summary>
/// <remarks>
/// An object may start from another one, its basis: what it does not say itself, the basis says. Nothing is copied, and
/// a value knows where it really stands.
/// </remarks>
internal sealed class JsonCursor
{
    /// <summary>Keys of a quantity in its long form.</summary>
    public const string ValueKey = "value", UnitKey = "unit";

    /// <summary>The key that names the set from which an object starts.</summary>
    public const string StartKey = "startFrom";

    /// <summary>No number of a plan comes near it, and no change of unit makes it overflow.</summary>
    public const double LargestNumber = 1e200;

    private readonly JsonCursor? parent;
    private readonly string step;
    private readonly JsonCursor? origin;

    private JsonCursor(JsonCursor? parent, string step, JsonElement element, ReadContext reading, JsonCursor? basis = null,
        JsonCursor? origin = null) =>
        (this.parent, this.step, Element, Reading, Basis, this.origin) = (parent, step, element, reading, basis, origin);

    /// <summary>The value.</summary>
    public JsonElement Element { get; }

    /// <summary>The reading this place belongs to.</summary>
    public ReadContext Reading { get; }

    /// <summary>The object from which this one starts; null where it says everything itself.</summary>
    public JsonCursor? Basis { get; }

    /// <summary>The way from the root, as a JSON path (RFC 9535): <c>$.stages[1].name</c>.</summary>
    public string Path => parent is null ? step : parent.Path + step;

    /// <summary>
    /// Where the value is written: elsewhere than at <see cref="Path"/> if it comes from a starting set.
    /// </summary>
    public string WrittenAt => origin?.WrittenAt ?? (parent is null ? step : parent.WrittenAt + step);

    /// <summary>The whole text, or the whole of a starting set.</summary>
    public static JsonCursor Root(JsonElement element, ReadContext reading, string name = "$") => new(null, name, element, reading);

    /// <summary>The value of a key of this object, on top of what the basis says there.</summary>
    public JsonCursor Under(string key, JsonElement element, JsonCursor? basis = null)
    {
        Reading.CountValue();
        return new(this, StepTo(key), element, Reading, basis is not null && IsOn(element, basis) ? basis : null);
    }

    /// <summary>The place of a key that is not there.</summary>
    public JsonCursor Under(string key) => Under(key, default);

    /// <summary>An item of this array, counted from 0.</summary>
    public JsonCursor Item(int index, JsonElement element)
    {
        Reading.CountValue();
        return new(this, $"[{index}]", element, Reading);
    }

    /// <summary>The same place on another basis.</summary>
    public JsonCursor On(JsonCursor? basis) => new(parent, step, Element, Reading, basis, origin);

    /// <summary>This value, which stands in a starting set, as a value of the object that starts from it.</summary>
    public JsonCursor SeenFrom(JsonCursor user) => new(user, step, Element, Reading, Basis, this);

    /// <summary>
    /// The value as written, cut short: a number, a text or a quantity. Null for what holds other values.
    /// </summary>
    public string? InWords => Element.ValueKind switch
    {
        JsonValueKind.String or JsonValueKind.Number => Excerpt.Of(Element.GetRawText().Trim('"')),
        JsonValueKind.Object when HasOwn(ValueKey, out JsonCursor? value) && HasOwn(UnitKey, out JsonCursor? unit) =>
            Excerpt.Of($"{value.Element.GetRawText()} {unit.Element}"),
        _ => null,
    };

    /// <summary>Says what is wrong here.</summary>
    public void Report(string message) => Reading.Report(WrittenAt, message);

    /// <summary>Whether the value is of the wanted kind; reports when it is not.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="wanted">The kind in words, for example <c>an object</c>.</param>
    public bool IsOf(JsonValueKind kind, string wanted)
    {
        if (Element.ValueKind == kind)
            return true;
        Report(Element.ValueKind == JsonValueKind.Null
            ? $"null is not accepted; {wanted} is wanted here, and what does not apply is left out."
            : $"{wanted} is wanted here; this is {KindInWords(Element.ValueKind)}.");
        return false;
    }

    /// <summary>The value as text; reports when it is none.</summary>
    public bool TryText([NotNullWhen(true)] out string? text)
    {
        text = null;
        if (!IsOf(JsonValueKind.String, "a text"))
            return false;
        try
        {
            text = Element.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            Report("the text holds half a surrogate pair; it is not Unicode.");
            return false;
        }
    }

    /// <summary>The value as a number; reports when it is none.</summary>
    public bool TryNumber(out double number)
    {
        number = 0;
        if (!IsOf(JsonValueKind.Number, "a number"))
            return false;
        if (Element.TryGetDouble(out number) && Math.Abs(number) <= LargestNumber)
            return true;
        Report($"{Excerpt.Of(Element.GetRawText())} is too large a number.");
        return false;
    }

    /// <summary>
    /// The place of a key of this object, or of its basis; false where this is no object or has no such key.
    /// </summary>
    public bool Has(string key, [NotNullWhen(true)] out JsonCursor? place)
    {
        JsonCursor? below = null;
        Basis?.Has(key, out below);
        if (!HasOwn(key, out place))
            place = below;
        else if (below is not null && IsOn(place.Element, below))
            place = place.On(below);
        return place is not null;
    }

    /// <summary>The place of a key of this object itself.</summary>
    public bool HasOwn(string key, [NotNullWhen(true)] out JsonCursor? place)
    {
        place = null;
        if (Element.ValueKind != JsonValueKind.Object)
            return false;
        foreach (JsonProperty property in Element.EnumerateObject())
        {
            if (NameOf(property) == key)
                place = Under(key, property.Value);
        }

        return place is not null;
    }

    /// <summary>
    /// The values of all keys of this object, whatever their names; reports those that are unreadable or there twice.
    /// </summary>
    public IEnumerable<JsonCursor> Members()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in Element.EnumerateObject())
        {
            if (NameOf(property) is not { } name)
                Report("a key holds half a surrogate pair; it is not Unicode.");
            else if (!seen.Add(name))
                Under(name).Report("the key stands here more than once.");
            else
                yield return Under(name, property.Value);
        }
    }

    /// <summary>
    /// The same object without a basis of another kind: one that says another word there is not laid over it.
    /// </summary>
    public JsonCursor OfOneKind(string kindKey)
    {
        if (Basis is null)
            return this;
        JsonCursor basis = Basis.OfOneKind(kindKey);
        bool isOther = HasOwn(kindKey, out JsonCursor? own) && basis.Has(kindKey, out JsonCursor? other)
            && own.Element.ToString() != other.Element.ToString();
        return On(isOther ? null : basis);
    }

    /// <summary>
    /// The key of a property; null where it is half a surrogate pair, which the runtime refuses to read.
    /// </summary>
    public static string? NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>
    /// Whether an object is laid over another: not a quantity, and not one that starts from a set of its own.
    /// </summary>
    private static bool IsOn(JsonElement element, JsonCursor basis) =>
        element.ValueKind == JsonValueKind.Object && basis.Element.ValueKind == JsonValueKind.Object
        && !element.EnumerateObject().Any(p => NameOf(p) is StartKey or ValueKey or UnitKey);

    private static string StepTo(string key)
    {
        bool plain = key.Length > 0 && !char.IsAsciiDigit(key[0]) && key.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');
        return plain
            ? "." + key
            : $"['{Excerpt.Of(key.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal))}']";
    }

    private static string KindInWords(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "nothing",
    };
}
