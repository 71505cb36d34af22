namespace Staging.Core.Tests.Samples;

/// <summary>The small samples run to their last line.</summary>
public sealed class SmallSampleTests : IDisposable
{
    private readonly Scratch scratch = new();

    public void Dispose() => scratch.Dispose();

    [Theory]
    [InlineData("SizeAVent", "before the nozzle; the gap peaked at")]
    [InlineData("OneOrifice", "Of the hot products the same sharp hole passes 0.")]
    public async Task A_small_sample_ends_with_its_last_line(string name, string last)
    {
        Ran ran = await Ran.Sample(name, scratch.Folder);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith(last, Ran.Lines(ran.Output)[^1], StringComparison.Ordinal);
    }
}
