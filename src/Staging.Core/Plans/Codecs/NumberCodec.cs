using System.Globalization;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>A number without unit: a ratio, a coefficient, a share.</summary>
internal sealed class NumberCodec : NumericCodec<double>
{
    /// <summary>The only one; it has no parameters.</summary>
    public static NumberCodec Ratio { get; } = new();

    /// <inheritdoc/>
    public override double Sample => 0;

    /// <inheritdoc/>
    public override string BaseUnit => "-";

    /// <inheritdoc/>
    public override double FromBase(double number) => number;

    /// <inheritdoc/>
    public override double ToBase(double value) => value;

    /// <inheritdoc/>
    public override string Say(double value) => value.ToString(CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public override string Say(AcceptedRange range, double value) => range.InWords();

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out double value) => place.TryNumber(out value);

    /// <inheritdoc/>
    public override JsonNode Write(double value, WriteContext context) => value;

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => new() { ["type"] = "number" };
}
