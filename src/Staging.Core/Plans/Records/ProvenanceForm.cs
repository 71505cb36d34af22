using Staging.Core.Plans.Forms;

namespace Staging.Core.Plans.Records;

/// <summary>Where numbers come from.</summary>
internal static class ProvenanceForm
{
    /// <summary>What a key that holds one means.</summary>
    public const string Meaning = "Where these numbers come from.";

    public static readonly RecordForm<Provenance> Form = new("provenance", "Where a number comes from.", f =>
    {
        var source = f.Required("source", TextForm.NotBlank, x => x.Source, "Author, title and year, or the reason for a judgement.");
        var locator = f.Optional<string?>("locator", TextForm.NotBlank!, x => x.Locator, null, "Section, table, equation or page; left out where there is none.");
        var how = f.Required("how", ChoiceForm<Evidence>.Words, x => x.How, "How the value was obtained.");
        return v => new Provenance { Source = source[v], Locator = locator[v], How = how[v] };
    });
}
