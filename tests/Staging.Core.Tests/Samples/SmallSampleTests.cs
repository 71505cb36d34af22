namespace Staging.Core.Tests.Samples;

/// <summary>The small samples run to their last line.</summary>
public sealed class SmallSampleTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("SizeAVent", "4 holes, drill ")]
    [InlineData("OneOrifice", "The same hole passes less mass but more volume of the hot products than of cold air.")]
    public async Task A_small_sample_ends_with_its_last_line(string name, string last)
    {
        Ran ran = await Ran.Sample(name, scratch.Folder);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith(last, Ran.Lines(ran.Output)[^1], StringComparison.Ordinal);
    }
}
