using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// A number that need not be there. Where it is, it has the form of any other; null is never written.
/// </summary>
internal sealed class OptionalNumberCodec<T>(NumericCodec<T> form) : NumericCodec<T?>
    where T : struct
{
    /// <inheritdoc/>
    public override T? Sample => form.Sample;

    /// <inheritdoc/>
    public override string BaseUnit => form.BaseUnit;

    /// <inheritdoc/>
    public override T? FromBase(double number) => form.FromBase(number);

    /// <inheritdoc/>
    public override double ToBase(T? value) => form.ToBase(value!.Value);

    /// <inheritdoc/>
    public override string Say(T? value) => form.Say(value!.Value);

    /// <inheritdoc/>
    public override string Say(AcceptedRange range, T? value) => form.Say(range, value!.Value);

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, out T? value)
    {
        bool good = form.TryRead(place, out T read);
        value = good ? read : null;
        return good;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T? value) => form.Write(writer, value!.Value);

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => form.Schema(definitions);
}
