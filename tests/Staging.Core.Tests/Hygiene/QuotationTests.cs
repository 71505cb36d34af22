using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>What a message puts in quotation marks is cut short where it may be from elsewhere: a name can be as long as a text.</summary>
public partial class QuotationTests
{
    /// <summary>The library's own words, a single sign, what was cut short before, and the name of a wall, which a sheet prints whole.</summary>
    private static readonly string[] Short = ["Header", "KindKey", "nearest", "sign", "c", "wall", "excerpt", "expected", "Plans.Codecs.EnumCodec<Seen>.WordFor(seen)"];

    [Fact]
    public void A_quotation_is_an_excerpt()
    {
        (string Path, string Quoted)[] quotations =
            [.. Repository.Library.SelectMany(f => Quotation().Matches(f.Text).Select(m => (f.Path, m.Groups[1].Value)))];
        Assert.Contains(quotations, q => q.Quoted.StartsWith("Excerpt.Of(", StringComparison.Ordinal));
        Assert.DoesNotContain(quotations, q => !q.Quoted.StartsWith("Excerpt.Of(", StringComparison.Ordinal) && !Short.Contains(q.Quoted)
            && !q.Path.EndsWith("/JsonLayout.cs", StringComparison.Ordinal));
    }

    [GeneratedRegex("(?:'|\\\\\")\\{([A-Za-z][^{}'\"]*)\\}(?:'|\\\\\")")]
    private static partial Regex Quotation();
}
