using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>The version of the format that a plan, or a text like it, is written in.</summary>
/// <param name="what">What is written in it, in words.</param>
internal sealed class PlanVersionCodec(string what) : Codec<int>
{
    /// <summary>The key.</summary>
    public const string Key = "planVersion";

    /// <summary>The version that is read and written. A plan that names none is taken to be of the first.</summary>
    public const int Current = 1;

    /// <summary>That of a plan.</summary>
    public static PlanVersionCodec Codec { get; } = new("plan");

    /// <inheritdoc/>
    public override int Sample => Current;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out int value)
    {
        if (!CountCodec.Whole.TryRead(place, out value) || value == Current)
            return value == Current;
        place.Report(value > Current
            ? Invariant.Text($"the {what} is of version {value}; this library reads version {Current}. A newer one reads it.")
            : Invariant.Text($"{value} is no version of a {what}; wanted: {Current}."));
        return false;
    }

    /// <inheritdoc/>
    public override JsonNode Write(int value, WriteContext context) => value;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "integer", ["const"] = Current };
}
