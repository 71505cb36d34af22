using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// A number that need not be there. Where it is, it is written like any other; null is never written.
/// </summary>
internal sealed class OptionalNumberCodec<T>(NumericCodec<T> codec) : NumericCodec<T?>
    where T : struct
{
    /// <inheritdoc/>
    public override T? Sample => codec.Sample;

    /// <inheritdoc/>
    public override string BaseUnit => codec.BaseUnit;

    /// <inheritdoc/>
    public override T? FromBase(double number) => codec.FromBase(number);

    /// <inheritdoc/>
    public override double ToBase(T? value) => codec.ToBase(value!.Value);

    /// <inheritdoc/>
    public override string Say(T? value) => codec.Say(value!.Value);

    /// <inheritdoc/>
    public override string Say(AcceptedRange range, T? value) => codec.Say(range, value!.Value);

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out T? value) => TryRead(place, null, out value);

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, AcceptedRange? range, out T? value)
    {
        bool good = codec.TryRead(place, range, out T read);
        value = good ? read : null;
        return good;
    }

    /// <inheritdoc/>
    public override JsonNode Write(T? value, WriteContext context) => codec.Write(value!.Value, context);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => codec.Schema(definitions);
}
