using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A text that is not blank and holds no control characters, which could steer a terminal.</summary>
internal sealed class TextCodec : Codec<string>
{
    /// <summary>The only one; it has no parameters.</summary>
    public static TextCodec NotBlank { get; } = new();

    /// <inheritdoc/>
    public override string Sample => "text";

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out string? value)
    {
        if (!place.TryText(out value))
            return false;
        int control = 0;
        while (control < value.Length && !char.IsControl(value[control]) && value[control] is not ('\u2028' or '\u2029'))
            control++;
        bool isBlank = string.IsNullOrWhiteSpace(value);
        if (isBlank)
            place.Report("the text is blank; some words are wanted here.");
        else if (control < value.Length)
            place.Report($"the text holds a control character, \\u{(int)value[control]:x4}, as character {control + 1}; it may hold none, and no "
                + "line breaks.");
        return !isBlank && control == value.Length;
    }

    /// <inheritdoc/>
    public override JsonNode Write(string value, WriteContext context) => value;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "string", ["pattern"] = "\\S" };
}
