using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>The C#, C and Python of README, package and docs is taken from samples and tests that compile and run.</summary>
public class SnippetTests
{
    private const string Source = "class C\n{\n    #region hole\n    int a = 1;\n\n    int b = a;\n    #endregion\n}\n";

    private static readonly ILookup<string, string> Known =
        Snippets.Regions(new SourceFile("samples/x.cs", Source)).ToLookup(r => r.Key, r => r.Value);

    [Fact]
    public void Every_block_equals_its_region()
    {
        ILookup<string, string> regions = ((string[])["*.cs", "*.c", "*.py"])
            .SelectMany(kind => Repository.Files("samples", kind).Concat(Repository.Files("tests", kind)))
            .Where(f => f.Name != "SnippetTests.cs")
            .SelectMany(Snippets.Regions).ToLookup(r => r.Key, r => r.Value);
        SourceFile readme = new("README.md", File.ReadAllText(Path.Combine(Repository.Root, "README.md")));
        Violations.None(Repository.Files("docs", "*.md").Concat(Repository.Files("src", "*.md")).Append(readme).SelectMany(page => Snippets.Wrong(page, regions)));
    }

    [Fact]
    public void A_block_equal_to_its_region_passes() =>
        Assert.Empty(Wrong("text\n<!-- snippet: hole -->\n```csharp\nint a = 1;\n\nint b = a;\n```\n"));

    [Theory]
    [InlineData("<!-- snippet: hole -->\n```csharp\nint a = 2;\n\nint b = a;\n```\n")]
    [InlineData("<!-- snippet: lost -->\n```csharp\nint a = 1;\n```\n")]
    [InlineData("```csharp\nint a = 1;\n```\n")]
    public void A_stale_lost_or_nameless_block_is_caught(string page) => Assert.Single(Wrong(page));

    [Theory]
    [InlineData("c", "{\n    /* #region hole */\n    int a = 1;\n    /* #endregion */\n}\n")]
    [InlineData("python", "def f():\n    # region hole\n    int a = 1;\n    # endregion\n")]
    public void Regions_of_other_languages_are_found(string language, string source)
    {
        ILookup<string, string> known = Snippets.Regions(new SourceFile("tests/native/x", source)).ToLookup(r => r.Key, r => r.Value);
        Assert.Empty(Snippets.Wrong(new SourceFile("docs/x.md", $"<!-- snippet: hole -->\n```{language}\nint a = 1;\n```\n"), known));
        Assert.Single(Snippets.Wrong(new SourceFile("docs/x.md", $"<!-- snippet: hole -->\n```{language}\nint a = 2;\n```\n"), known));
    }

    [Fact]
    public void Regions_of_one_name_in_one_file_are_one_block()
    {
        SourceFile source = new("samples/x.cs", "#region a\nusing X;\n#endregion\nclass C\n{\n    #region a\n    int b;\n    #endregion\n}\n");
        Assert.Equal([new("a", "using X;\n\nint b;")], Snippets.Regions(source));
    }

    [Fact]
    public void Blocks_in_other_languages_are_free() => Assert.Empty(Wrong("```sh\ndotnet test\n```\n"));

    private static IEnumerable<string> Wrong(string page) => Snippets.Wrong(new SourceFile("docs/x.md", page), Known);
}
