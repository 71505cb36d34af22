using System.Globalization;
using Staging.Core.Reviews;
using Staging.Core.Tests.Hygiene.Sources;
using Staging.Core.Tests.Plans;

namespace Staging.Core.Tests.Reviews;

/// <summary>A review in plain text.</summary>
public class ReviewTextTests
{
    private static readonly StagingReview Demo = DemoPlan.Plan.Review();

    [Fact]
    public void It_says_what_the_sample_is_expected_to_print()
    {
        string text = Demo.ToString();
        string[] expected = File.ReadAllLines(Path.Combine(Repository.Root, "samples", "GapStagedFlight", "expected.txt"));
        Assert.True(expected.Length > 3);
        Assert.All(expected, line => Assert.Contains(line, text, StringComparison.Ordinal));
        Assert.StartsWith("Verdict: MAY LIGHT.", text.Split('\n')[1], StringComparison.Ordinal);
        Assert.Contains(Demo.Gaps[0].ToString(), text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(92)]
    [InlineData(100)]
    [InlineData(118)]
    public void A_width_moves_words_to_other_lines_and_loses_none(int width)
    {
        string text = Demo.ToString(width);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, width));
        Assert.Equal(Words(Demo.ToString(1000)), Words(text));
        Assert.Contains(text.Split('\n'), line => line.Length > width - 8);
    }

    [Theory]
    [InlineData(91)]
    [InlineData(1001)]
    public void A_width_outside_its_range_is_refused(int width) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(width), () => Demo.ToString(width));

    [Fact]
    public void The_text_does_not_depend_on_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string text = Demo.ToString(), json = Demo.ToJson();
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            (comma.NumberFormat.NumberDecimalSeparator, comma.NumberFormat.PercentDecimalSeparator) = (",", ",");
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(text, Demo.ToString());
            Assert.Equal(json, Demo.ToJson());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_stage_that_stays_cold_is_the_verdict()
    {
        StagingReview review = TestPlans.Through(TestPlans.Lighting with { Vents = [] }).Review(cases: 0);
        Assert.False(review.EveryStageLights);
        Assert.StartsWith("Verdict: sustainer STAYS COLD.", review.ToString().Split('\n')[1], StringComparison.Ordinal);
        Assert.Contains("closed", review.ToString(), StringComparison.Ordinal);
    }

    private static string[] Words(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
}
