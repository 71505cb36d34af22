using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Records;
using Staging.Core.Plans.Writing;
using Staging.Core.Studies;

namespace Staging.Core.GroundTests;

/// <summary>
/// A trace of gap pressure: the name of a CSV file, or two columns. It is written as columns.
/// </summary>
internal sealed class TraceCodec : Codec<MeasuredTrace>
{
    private static readonly RecordCodec<MeasuredTrace> Columns = new("traceColumns", "A trace as two columns of equal length.", f =>
    {
        var time = f.Required("time_s", ColumnCodec.Numbers, x => Memory(x.Times), "Times since burn-through in seconds, rising.");
        var gauge = f.Required(GroundTestChecks.TraceName, ColumnCodec.Numbers, x => Memory(x.Values),
            "As many pressures above that of the air, in pascals.");
        return v => MeasuredTrace.Of(GroundTestChecks.TraceName, [.. time[v].Span], [.. gauge[v].Span]);
    });

    private static readonly CsvFile<MeasuredTrace> Named =
        new(MeasuredTrace.ReadCsv, MeasuredTrace.Of(GroundTestChecks.TraceName, [0, 1], [0, 0]));

    /// <summary>The only one; it has no parameters.</summary>
    public static TraceCodec Codec { get; } = new();

    /// <inheritdoc/>
    public override MeasuredTrace Sample => Columns.Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out MeasuredTrace? value) =>
        place.Element.ValueKind == JsonValueKind.String ? Named.TryRead(place, out value) : Columns.TryRead(place, out value);

    /// <inheritdoc/>
    public override JsonNode Write(MeasuredTrace value, WriteContext context) => Columns.Write(value, context);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference("trace", () => new JsonObject
    {
        ["description"] = "A trace of gap pressure: the name of a CSV file with the head time_s,gauge_Pa beside this one or in a folder "
            + "below it, or two columns.",
        ["oneOf"] = new JsonArray(Columns.SchemaOfObject(null, definitions), Named.Schema(definitions)),
    });

    private static ReadOnlyMemory<double> Memory(EquatableArray<double> values) => values.Items.AsMemory();
}
