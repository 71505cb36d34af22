using System.Globalization;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A whole number of things.</summary>
internal sealed class CountCodec : NumericCodec<int>
{
    /// <summary>The only one; it has no parameters.</summary>
    public static CountCodec Whole { get; } = new();

    /// <inheritdoc/>
    public override int Sample => 1;

    /// <inheritdoc/>
    public override string BaseUnit => "-";

    /// <inheritdoc/>
    public override int FromBase(double number) => (int)Math.Max(number, int.MinValue);

    /// <inheritdoc/>
    public override double ToBase(int value) => value;

    /// <inheritdoc/>
    public override string Say(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string Say(AcceptedRange range, int value) => range.InWords();

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out int value)
    {
        value = 0;
        if (!place.TryNumber(out double number))
            return false;
        bool whole = Math.Abs(number) <= int.MaxValue && number == Math.Floor(number);
        if (!whole)
            place.Report($"{Excerpt.Of(place.Element.GetRawText())} is not a count; a whole number is wanted here.");
        else
            value = (int)number;
        return whole;
    }

    /// <inheritdoc/>
    public override JsonNode Write(int value, WriteContext context) => value;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "integer" };
}
