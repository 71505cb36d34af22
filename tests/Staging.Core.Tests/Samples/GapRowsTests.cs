using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Samples;

/// <summary>The page on common practice shows what the program prints, and a page that does not is caught.</summary>
public sealed class GapRowsTests : IDisposable
{
    private static readonly string Page = Path.Combine(Repository.Root, "docs", "common-practice.md");

    /// <summary>What is changed in the page, and what then stands there.</summary>
    private static readonly (string Old, string Other)[] Faults =
    [
        ("pushed apart", "lit"),
        ("| 900 mm |", "| 800 mm |"),
        ("<!-- table: rows -->", ""),
    ];

    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    /// <summary>One run for all pages: it computes the tables once.</summary>
    [Fact]
    public async Task The_page_is_in_step_and_one_out_of_step_is_caught()
    {
        string text = await File.ReadAllTextAsync(Page, TestContext.Current.CancellationToken);
        Assert.All(Faults, f => Assert.Contains(f.Old, text, StringComparison.Ordinal));
        string[] wrong = [.. Faults.Select((f, i) => scratch.Write($"page{i}.md", text.Replace(f.Old, f.Other, StringComparison.Ordinal)))];
        Ran ran = await Ran.Sample("GapRows", scratch.Folder, ["--check", Page, .. wrong]);
        Assert.Equal((1, ""), (ran.Code, ran.Error));
        Assert.Equal(
            [$"{Page} holds the tables", .. wrong.Select(page => $"{page} is out of step with the library; --write brings it up to date")],
            Ran.Lines(ran.Output).Where(line => !line.Contains(" should say: ", StringComparison.Ordinal)));
        Assert.DoesNotContain($"{Page} should say", ran.Output, StringComparison.Ordinal);
        Assert.All(wrong, page => Assert.Contains($"{page} should say", ran.Output, StringComparison.Ordinal));
    }
}
