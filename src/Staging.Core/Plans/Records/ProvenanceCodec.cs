using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Nodes;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Writing;

namespace Staging.Core.Plans.Records;

/// <summary>Where numbers come from: a text, <c>judgement: the reason</c>, or an object.</summary>
internal sealed class ProvenanceCodec : Codec<Provenance>
{
    private static readonly RecordCodec<Provenance> Parts = new("provenanceParts", "Where a number comes from.", f =>
    {
        var source = f.Required("source", TextCodec.NotBlank, x => x.Source, "Author, title and year, or the reason for a judgement.");
        var locator = f.Optional<string?>("locator", TextCodec.NotBlank!, x => x.Locator, null,
            "Section, table, equation or page; left out where there is none.");
        var how = f.Required("how", EnumCodec<Evidence>.Words, x => x.How, "How the value was obtained.");
        return v => new Provenance { Source = source[v], Locator = locator[v], How = how[v] };
    });

    private static readonly ImmutableArray<string> Words = [.. Enum.GetValues<Evidence>().Select(EnumCodec<Evidence>.WordFor)];

    /// <summary>The only one; it has no parameters.</summary>
    public static ProvenanceCodec Codec { get; } = new();

    /// <summary>What is taken where a plan says nothing: a number without a source is at most a judgement.</summary>
    public static Provenance NotStated { get; } = new() { Source = "the plan's own number, no source stated", How = Evidence.Judgement };

    /// <inheritdoc/>
    public override Provenance Sample => NotStated;

    /// <summary>The key that says where the numbers of a record come from.</summary>
    /// <param name="fields">The keys of the record.</param>
    /// <param name="get">The property.</param>
    public static Field<T, Provenance> In<T>(FieldList<T> fields, Func<T, Provenance> get) => fields.Optional("provenance", Codec, get,
        NotStated, "Where these numbers come from; the plan's own numbers when left out.", nameof(Provenance));

    /// <inheritdoc/>
    public override bool TryRead(JsonCursor place, [NotNullWhen(true)] out Provenance? value)
    {
        value = null;
        if (place.Element.ValueKind != JsonValueKind.String)
            return Parts.TryRead(place, out value);
        if (!TextCodec.NotBlank.TryRead(place, out string? text))
            return false;
        int colon = text.IndexOf(':', StringComparison.Ordinal), known = colon < 0 ? -1 : Words.IndexOf(text[..colon]);
        if (known < 0 || string.IsNullOrWhiteSpace(text[(colon + 1)..]))
        {
            place.Report($"'{Excerpt.Of(text)}' does not say how the number was obtained; wanted: one of "
                + string.Join(", ", Words) + ", a colon and the source, for example \"judgement: a firm fit\".");
            return false;
        }

        value = new Provenance { Source = text[(colon + 1)..].Trim(), How = Enum.GetValues<Evidence>()[known] };
        return true;
    }

    /// <inheritdoc/>
    public override JsonNode Write(Provenance value, WriteContext context)
    {
        bool isText = context.Form == PlanForm.Brief && value.Locator is null && value.Source == value.Source.Trim();
        return isText ? $"{EnumCodec<Evidence>.WordFor(value.How)}: {value.Source}" : Parts.Write(value, context);
    }

    /// <inheritdoc/>
    public override JsonObject Schema(SchemaDefinitions definitions) => definitions.Reference("provenance", () => new JsonObject
    {
        ["description"] = "Where a number comes from: a word, a colon and the source, or an object.",
        ["anyOf"] = new JsonArray(
            new JsonObject { ["type"] = "string", ["pattern"] = $"^({string.Join('|', Words)}):\\s*\\S" },
            Parts.SchemaOfObject(null, definitions)),
    });
}
