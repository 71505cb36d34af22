using System.Text.RegularExpressions;
using Staging.Core.Gases;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene.Pages;

/// <summary>
/// Every page of the documentation can be reached: the table of contents of its folder lists it. Every public namespace
/// is described.
/// </summary>
public class PageTests
{
    [Fact]
    public void Every_page_is_listed() =>
        Violations.None(Unlisted(Repository.Files("docs", "*.md"), Repository.Files("docs", "toc.yml")));

    [Fact]
    public void An_unlisted_page_is_caught()
    {
        SourceFile[] pages = [new("docs/theory/a.md", ""), new("docs/theory/b.md", ""), new("docs/index.md", "")];
        Assert.Equal(["docs/theory/b.md: not listed in docs/theory/toc.yml"], Unlisted(pages, [new("docs/theory/toc.yml", "- href: a.md\n")]));
    }

    [Fact]
    public void Every_public_namespace_is_described() =>
        Violations.None(Undescribed(typeof(Guard).Assembly.GetExportedTypes(), Assert.Single(Repository.Files("docs", "namespaces.md")).Text));

    [Fact]
    public void A_namespace_without_words_is_caught() => Assert.Equal(
        ["docs/namespaces/namespaces.md: no words about Staging.Core.Gases"],
        Undescribed([typeof(Provenance), typeof(PerfectGas)], "---\nuid: Staging.Core\nsummary: *content\n---\nWords.\n"));

    private static IEnumerable<string> Undescribed(IEnumerable<Type> types, string page) =>
        from name in types.Select(t => t.Namespace!).Distinct()
        where !Regex.IsMatch(page, $@"^uid: {Regex.Escape(name)}\nsummary: \*content\n---\n\w", RegexOptions.Multiline)
        select $"docs/namespaces/namespaces.md: no words about {name}";

    private static IEnumerable<string> Unlisted(IEnumerable<SourceFile> pages, IReadOnlyList<SourceFile> contents) =>
        from page in pages
        where page.Path != "docs/index.md" && page.Folder is not ("docs/validation" or "docs/namespaces" or "docs/examples")
        let toc = $"{page.Folder}/toc.yml"
        where !contents.Any(c => c.Path == toc && c.Text.Contains($"href: {page.Name}\n", StringComparison.Ordinal))
        select $"{page.Path}: not listed in {toc}";
}
