using Staging.Core.Plans.Codecs;

namespace Staging.Core.Plans.Records;

/// <summary>Where numbers come from.</summary>
internal static class ProvenanceCodec
{
    /// <summary>What a key that holds one means.</summary>
    public const string Meaning = "Where these numbers come from.";

    public static readonly RecordCodec<Provenance> Codec = new("provenance", "Where a number comes from.", f =>
    {
        var source = f.Required("source", TextCodec.NotBlank, x => x.Source, "Author, title and year, or the reason for a judgement.");
        var locator = f.Optional<string?>("locator", TextCodec.NotBlank!, x => x.Locator, null,
            "Section, table, equation or page; left out where there is none.");
        var how = f.Required("how", EnumCodec<Evidence>.Words, x => x.How, "How the value was obtained.");
        return v => new Provenance { Source = source[v], Locator = locator[v], How = how[v] };
    });
}
