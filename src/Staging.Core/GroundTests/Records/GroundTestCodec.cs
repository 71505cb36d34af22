using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.GroundTests;

/// <summary>
/// One test record; where it can be read, what its own check refuses is a problem of the text as well, so that all
/// problems of a series are told at once.
/// </summary>
internal sealed class GroundTestCodec : Codec<GroundTest>
{
    /// <summary>The only one; it has no parameters.</summary>
    public static GroundTestCodec Codec { get; } = new();

    /// <inheritdoc/>
    public override GroundTest Sample => GroundTestCodecs.Record.Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out GroundTest? value)
    {
        if (!GroundTestCodecs.Record.TryRead(place, out value))
            return false;
        bool good = true;
        foreach (ModelFinding finding in value.Check().Where(f => f.Severity == FindingSeverity.Error))
        {
            place.Reading.Report($"{place.WrittenAt}.{finding.KeyPath}", $"{finding.Code}: {finding.Message}");
            good = false;
        }

        return good;
    }

    /// <inheritdoc/>
    public override JsonNode Write(GroundTest value, WriteContext context) => GroundTestCodecs.Record.Write(value, context);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => GroundTestCodecs.Record.Schema(definitions);
}
