using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Staging.Core.Plans.Forms;

/// <summary>An interface of which a plan can hold one implementation.</summary>
internal sealed class AsForm<T, TOnly>(Form<TOnly> form) : Form<T>
    where T : class
    where TOnly : class, T
{
    /// <inheritdoc/>
    public override T Sample => form.Sample;

    /// <inheritdoc/>
    public override bool TryRead(JsonPlace place, [MaybeNullWhen(false)] out T value)
    {
        bool read = form.TryRead(place, out TOnly? found);
        value = found;
        return read;
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, T value) => form.Write(
        writer, value as TOnly ?? throw new ArgumentException($"A plan cannot hold {value.GetType().Name}; it can hold {typeof(TOnly).Name}.", nameof(value)));

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => form.Schema(definitions);
}
