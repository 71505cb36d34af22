using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Every page of the documentation can be reached: the table of contents of its folder lists it.</summary>
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

    private static IEnumerable<string> Unlisted(IEnumerable<SourceFile> pages, IReadOnlyList<SourceFile> contents) =>
        from page in pages
        where page.Path != "docs/index.md" && page.Folder is not "docs/validation"
        let toc = $"{page.Folder}/toc.yml"
        where !contents.Any(c => c.Path == toc && c.Text.Contains($"href: {page.Name}\n", StringComparison.Ordinal))
        select $"{page.Path}: not listed in {toc}";
}
