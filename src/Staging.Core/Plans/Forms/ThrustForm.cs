using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Flight;

namespace Staging.Core.Plans.Forms;

/// <summary>A thrust curve: the name of a file with it, or its two columns. It is written with its columns.</summary>
internal sealed class ThrustForm : Form<ThrustCurve>
{
    private const string FileKey = "thrustCurveFile";
    private static readonly RecordForm<string> ByFile = new("thrust curve file", k => k.Needs(FileKey, TextForm.NotBlank, x => x));

    private static readonly RecordForm<ThrustCurve> ByColumns = new("thrust curve", k =>
    {
        var time = k.Needs("time_s", ColumnForm.Numbers, c => c.Time_s);
        var thrust = k.Needs("thrust_N", ColumnForm.Numbers, c => c.Thrust_N);
        return v => ThrustCurve.FromColumns(time(v).Span, thrust(v).Span);
    });

    /// <summary>The form; it has no parameters.</summary>
    public static ThrustForm Curve { get; } = new();

    /// <inheritdoc/>
    public override ThrustCurve Sample => ByColumns.Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, [MaybeNullWhen(false)] out ThrustCurve value)
    {
        bool named = place.Element.ValueKind == JsonValueKind.Object && place.Element.TryGetProperty(FileKey, out _);
        if (!named)
            return ByColumns.TryRead(place, out value);
        value = null;
        return ByFile.TryRead(place, out string file) && TryOpen(place.Under(FileKey), file, out value);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, ThrustCurve value) => ByColumns.Write(writer, value);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference("thrust", () => new JsonObject
    {
        ["oneOf"] = new JsonArray(ByFile.ObjectSchema(definitions, null), ByColumns.ObjectSchema(definitions, null)),
    });

    private static bool TryOpen(JsonPlace place, string file, [NotNullWhen(true)] out ThrustCurve? curve)
    {
        curve = null;
        try
        {
            using TextReader reader = place.Reading.OpenThrustCurve(file);
            curve = ThrustCurve.FromCsv(reader);
            return true;
        }
        catch (FormatException fault)
        {
            place.Report($"in '{file}': {fault.Message}");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            place.Report($"'{file}' could not be read: {fault.Message.ReplaceLineEndings(" ")}");
        }

        return false;
    }
}
