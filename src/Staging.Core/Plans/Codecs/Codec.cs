using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// How one type stands in JSON. One description serves three purposes, so they cannot drift apart: reading, writing and
/// the published schema.
/// </summary>
internal abstract class Codec<T>
{
    /// <summary>Some legal value, to try the rules of a record that holds one. It never reaches a plan.</summary>
    public abstract T Sample { get; }

    /// <summary>Reads the value at a place.</summary>
    /// <param name="place">The place; it takes the reports.</param>
    /// <param name="value">The value.</param>
    /// <returns>Whether there is a value; when not, at least one problem was reported, unless the place need not be
    /// complete.</returns>
    public abstract bool TryRead(JsonCursor place, [MaybeNullWhen(false)] out T value);

    /// <summary>Reads a value that has to lie in a range, which a report may make use of.</summary>
    public virtual bool TryRead(JsonCursor place, AcceptedRange? range, [MaybeNullWhen(false)] out T value) => TryRead(place, out value);

    /// <summary>The value in JSON.</summary>
    public abstract JsonNode Write(T value, WriteContext context);

    /// <summary>What the schema says of it: a reference to a definition, or a few words.</summary>
    public abstract JsonObject Schema(SchemaDefinitions definitions);
}
