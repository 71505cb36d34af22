using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Samples;

/// <summary>The page on common practice shows what the program prints.</summary>
public sealed class GapRowsTests : IDisposable
{
    private static readonly string Page = Path.Combine(Repository.Root, "docs", "common-practice.md");
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Fact]
    public async Task The_page_is_in_step()
    {
        Ran ran = await Ran.Sample("GapRows", scratch.Folder, "--check", Page);
        Assert.True(ran.Code == 0, ran.Output + ran.Error);
    }

    [Theory]
    [InlineData("pushed apart", "lit")]
    [InlineData("| 900 mm |", "| 800 mm |")]
    [InlineData("<!-- table: rows -->", "")]
    public async Task A_page_out_of_step_is_caught(string old, string other)
    {
        string text = await File.ReadAllTextAsync(Page, TestContext.Current.CancellationToken);
        Assert.Contains(old, text, StringComparison.Ordinal);
        Ran ran = await Ran.Sample("GapRows", scratch.Folder, "--check", scratch.Write("page.md", text.Replace(old, other, StringComparison.Ordinal)));
        Assert.Equal(1, ran.Code);
    }
}
