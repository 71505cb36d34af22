using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Flight;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>
/// A thrust history: the name of a CSV file, as a text or under a key, or two columns. It is written as columns.
/// </summary>
internal sealed class ThrustHistoryCodec : Codec<ThrustHistory>
{
    private const string FileKey = "thrustHistoryFile";

    private static readonly RecordCodec<ThrustHistory> Columns = new("thrustColumns", "A thrust history as two columns of equal length.",
        f =>
    {
        var time = f.Required("time_s", ColumnCodec.Numbers, x => x.Time_s,
            $"Times from ignition in seconds, rising, 0 to 1000; or {FileKey} in place of both columns.");
        var thrust = f.Required("thrust_N", ColumnCodec.Numbers, x => x.Thrust_N,
            "As many thrusts in newtons, 0 to 1e7; together 1e-9 N s or more.");
        return v => ThrustHistory.FromColumns(time[v].Span, thrust[v].Span);
    });

    private static readonly CsvFile<ThrustHistory> Named = new(r => ThrustHistory.FromCsv(r), ThrustHistory.FromColumns([0, 1], [1, 1]));

    private static readonly RecordCodec<ThrustHistory> File = new("thrustFile",
        "A thrust history in a CSV file with the header time_s,thrust_N.", f =>
    {
        var file = f.Required(FileKey, Named, x => x, "Name of the file, beside the plan or in a folder below it.");
        return v => file[v];
    });

    /// <summary>The only one; it has no parameters.</summary>
    public static ThrustHistoryCodec Curve { get; } = new();

    /// <inheritdoc/>
    public override ThrustHistory Sample => Columns.Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out ThrustHistory? value)
    {
        if (place.Element.ValueKind == JsonValueKind.String)
            return Named.TryRead(place, out value);
        bool named = place.Has(FileKey, out _);
        return (named ? File : Columns).TryRead(place, out value);
    }

    /// <inheritdoc/>
    public override JsonNode Write(ThrustHistory value, WriteContext context) => Columns.Write(value, context);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference("thrust", () => new JsonObject
    {
        ["description"] = "Thrust against time from ignition.",
        ["oneOf"] = new JsonArray(Columns.SchemaOfObject(null, definitions), File.SchemaOfObject(null, definitions),
            Named.Schema(definitions)),
    });
}
