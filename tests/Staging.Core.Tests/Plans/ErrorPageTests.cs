using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Plans;

/// <summary>The page of codes lists every code of the library, and no other.</summary>
public partial class ErrorPageTests
{
    [Fact]
    public void Every_code_is_explained_and_every_explanation_has_a_code()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "guides", "errors.md"));
        string[] used = [.. Repository.Library.SelectMany(f => QuotedCode().Matches(f.Text)).Select(m => m.Groups[1].Value).Distinct().Order()];
        string[] explained = [.. RowCode().Matches(page).Select(m => m.Groups[1].Value)];
        Assert.True(used.Length > 40, $"only {used.Length} codes were found");
        Assert.Equal(used, explained.Order());
    }

    [GeneratedRegex("\"([A-Z]{3}[0-9]{3})\"")]
    private static partial Regex QuotedCode();

    [GeneratedRegex("(?m)^\\| ([A-Z]{3}[0-9]{3}) \\|")]
    private static partial Regex RowCode();
}
