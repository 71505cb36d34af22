using System.Diagnostics.CodeAnalysis;
using System.Diagnostics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>
/// Gaps by names of the plan's own. They need not be complete, since what starts from one says the rest; what they do
/// say must be right.
/// </summary>
internal sealed class OwnGapsCodec : Codec<OwnGaps>
{
    /// <summary>The key.</summary>
    public const string Key = "gaps";

    /// <summary>The only one; it has no parameters.</summary>
    public static OwnGapsCodec Codec { get; } = new();

    /// <inheritdoc/>
    public override OwnGaps Sample => OwnGaps.Read;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out OwnGaps? value)
    {
        value = OwnGaps.Read;
        if (!place.IsOf(JsonValueKind.Object, "an object of gaps by their names"))
            return false;
        int before = place.Reading.Reported;
        place.Reading.InPart = true;
        foreach (JsonCursor gap in place.Members())
            GapCodecs.Gap.TryRead(gap, out _);
        place.Reading.InPart = false;
        return place.Reading.Reported == before;
    }

    /// <inheritdoc/>
    public override JsonNode Write(OwnGaps value, WriteContext context) =>
        throw new UnreachableException("The gaps of a plan stand with its stages; they are gathered when it is written.");

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new()
    {
        ["type"] = "object",
        ["additionalProperties"] = definitions.Part(() => GapCodecs.Gap.Schema(definitions)),
    };
}
