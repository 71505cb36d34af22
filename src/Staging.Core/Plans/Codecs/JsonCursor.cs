using System.Diagnostics.CodeAnalysis;
using System.Text.Json;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// One place in a JSON text: the value that stands there and the way to it. Problems are reported to the place they
/// belong to.
/// </summary>
internal sealed class JsonCursor
{
    /// <summary>No number of a plan comes near it, and no change of unit makes it overflow.</summary>
    private const double LargestNumber = 1e200;

    private readonly JsonCursor? parent;
    private readonly string step;

    private JsonCursor(JsonCursor? parent, string step, JsonElement element, ReadContext reading) =>
        (this.parent, this.step, Element, Reading) = (parent, step, element, reading);

    /// <summary>The value.</summary>
    public JsonElement Element { get; }

    /// <summary>The reading this place belongs to.</summary>
    public ReadContext Reading { get; }

    /// <summary>The way from the root, as a JSON path (RFC 9535): <c>$.stages[1].name</c>.</summary>
    public string Path => parent is null ? step : parent.Path + step;

    /// <summary>The whole text.</summary>
    public static JsonCursor Root(JsonElement element, ReadContext reading) => new(null, "$", element, reading);

    /// <summary>The value of a key of this object.</summary>
    public JsonCursor Under(string key, JsonElement element) => new(this, StepTo(key), element, Reading);

    /// <summary>The place of a key that is not there.</summary>
    public JsonCursor Under(string key) => Under(key, default);

    /// <summary>An item of this array, counted from 0.</summary>
    public JsonCursor Item(int index, JsonElement element) => new(this, $"[{index}]", element, Reading);

    /// <summary>Says what is wrong here.</summary>
    public void Report(string message) => Reading.Report(Path, message);

    /// <summary>Whether the value is of the wanted kind; reports when it is not.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="wanted">The kind in words, for example <c>an object</c>.</param>
    public bool IsOf(JsonValueKind kind, string wanted)
    {
        if (Element.ValueKind == kind)
            return true;
        Report(Element.ValueKind == JsonValueKind.Null
            ? $"null is not accepted; {wanted} is wanted here, and what does not apply is left out."
            : $"{wanted} is wanted here; this is {InWords(Element.ValueKind)}.");
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
        Report($"{Excerpt(Element.GetRawText())} is too large a number.");
        return false;
    }

    /// <summary>The place of a key of this object; false where this is no object or has no such key.</summary>
    public bool Has(string key, [NotNullWhen(true)] out JsonCursor? place)
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

    /// <summary>The first characters of a long text.</summary>
    public static string Excerpt(string text)
    {
        const int Most = 60;
        return text.Length <= Most ? text : text[..(char.IsHighSurrogate(text[Most - 1]) ? Most - 1 : Most)] + "...";
    }

    private static string StepTo(string key)
    {
        bool plain = key.Length > 0 && !char.IsAsciiDigit(key[0]) && key.All(c => char.IsAsciiLetterOrDigit(c) || c == '_');
        return plain
            ? "." + key
            : $"['{Excerpt(key.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal))}']";
    }

    private static string InWords(JsonValueKind kind) => kind switch
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
