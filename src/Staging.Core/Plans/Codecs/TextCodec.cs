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
        string? fault = string.IsNullOrWhiteSpace(value) ? "the text is blank; some words are wanted here." : Guard.ControlCharacter(value);
        if (fault is not null)
            place.Report(fault);
        return fault is null;
    }

    /// <inheritdoc/>
    public override JsonNode Write(string value, WriteContext context) => value;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "string", ["pattern"] = "\\S" };
}
