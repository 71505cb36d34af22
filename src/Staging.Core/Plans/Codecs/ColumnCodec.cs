using System.Text.Json.Nodes;
using System.Text.Json;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A column of plain numbers; its unit is in the name of its key.</summary>
/// <param name="sample">A column that a record accepts.</param>
internal sealed class ColumnCodec(double[] sample) : Codec<ReadOnlyMemory<double>>
{
    /// <summary>A column whose record takes numbers from 0 to 1.</summary>
    public static ColumnCodec Numbers { get; } = new([0, 1]);

    /// <inheritdoc/>
    public override ReadOnlyMemory<double> Sample => sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out ReadOnlyMemory<double> value)
    {
        value = default;
        if (!place.IsOf(JsonValueKind.Array, "a list of numbers"))
            return false;
        var column = new double[place.Element.GetArrayLength()];
        int index = 0;
        bool good = true;
        foreach (JsonElement element in place.Element.EnumerateArray())
        {
            good &= place.Item(index, element).TryNumber(out column[index]);
            index++;
        }

        value = column;
        return good;
    }

    /// <inheritdoc/>
    public override JsonNode Write(ReadOnlyMemory<double> value, WriteContext context) =>
        new JsonArray([.. value.ToArray().Select(x => (JsonNode)x)]);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) =>
        new() { ["type"] = "array", ["items"] = new JsonObject { ["type"] = "number" }, ["minItems"] = 2 };
}
