using GapStagedFlight.Figures;
using Staging.Core.Reviews;

namespace Staging.Core.Tests.Samples;

/// <summary>The figures of the main sample for plans that end in every way: read back from the picture, not from what drew it.</summary>
public sealed class FigureTests
{
    private const double Width = 900, Height = 540;

    public static TheoryData<string> Plans => [.. FigurePlans.All.Keys];

    [Theory]
    [MemberData(nameof(Plans))]
    public void Titles_say_what_happened_and_no_words_touch_or_leave_the_picture(string name)
    {
        (Func<StagingReview> review, string[] titles) = FigurePlans.All[name];
        var drawn = new List<string>();
        foreach ((string file, DrawnFigure figure) in ReviewFigures.Of(review()))
        {
            using (figure)
            {
                Assert.Empty(figure.LeftOut);
                drawn.Add(figure.Title);
                FigureText[] words = FigureText.Of(figure.Svg());
                Assert.Contains(words, w => w.Words == figure.Title);
                Assert.All(words, w => Assert.True(w.Left >= 0 && w.Right <= Width && w.Upper >= 0 && w.Lower <= Height, $"{file}: {w} leaves the picture"));
                Assert.All(words.SelectMany((w, i) => words.Skip(i + 1).Select(o => (w, o))), p => Assert.False(p.w.Meets(p.o), $"{file}: {p.w} on {p.o}"));
            }
        }

        Assert.Equal(titles.Length, drawn.Count);
        Assert.All(titles.Zip(drawn), t => Assert.Contains(t.First, t.Second, StringComparison.Ordinal));
    }
}
