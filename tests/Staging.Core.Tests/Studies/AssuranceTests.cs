using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies;

public class AssuranceTests
{
    private static readonly InputSet<double> Unit = new(0.0, new StudyInput<double>("u", "-", Distribution.Uniform(0, 1), (_, v) => v));

    [Theory]
    [InlineData(0.9, 0.95, 100)]
    [InlineData(0.5, 0.99, 30)]
    [InlineData(0.99, 0.95, 1000)]
    public void Hits_needed_are_the_fewest_that_bear_the_confidence(double probability, double confidence, int cases)
    {
        int needed = new Assurance { Probability = probability, Confidence = confidence, Cases = cases }.HitsNeeded!.Value;
        // One-sided at the confidence is two-sided at 2 confidence - 1: the exact lower end crosses the probability at the hits needed.
        Assert.True(new Proportion(needed, cases).ClopperPearson(2 * confidence - 1).Low >= probability);
        Assert.True(new Proportion(needed - 1, cases).ClopperPearson(2 * confidence - 1).Low < probability);
    }

    [Fact]
    public void Counts_up_to_two_to_the_forty_have_their_interval_and_greater_ones_are_refused()
    {
        const long most = 1L << 40;
        Interval half = new Proportion(most / 2, most).ClopperPearson();
        // Normal in the limit: half as wide as 1.96 standard errors, which are 1/2 over the root of the count. The beta function is
        // known to some 1e-3 of that at such counts; a hundredth is no matter.
        double normal = 1.959964 * 0.5 / Math.Sqrt(most);
        Assert.Equal(normal, half.HalfWidth, 0.01 * normal);
        Assert.Equal("cases", Assert.Throws<ArgumentOutOfRangeException>(() => new Proportion(1, most + 1)).ParamName);
    }

    [Fact]
    public void Too_few_cases_are_refused_with_how_many_would_do()
    {
        var asked = new Assurance { Probability = 0.99, Cases = 100 };
        Assert.Null(asked.HitsNeeded);
        // 0.99^n is at most 0.05 from n = 298.07 on.
        Assert.Contains("299 or more can", Assert.Throws<InvalidModelException>(() => asked.Of(Unit, (_, _) => true)).Message, StringComparison.Ordinal);
        Assert.Equal(299, new Assurance { Probability = 0.99, Cases = 299 }.HitsNeeded);
    }

    [Fact]
    public void Cases_are_run_only_until_the_count_cannot_turn()
    {
        int runs = 0;
        var asked = new Assurance { Probability = 0.9, Cases = 1000 };
        Assert.False(asked.Of(Unit, (_, _) => ++runs < 0));
        Assert.Equal(1000 - asked.HitsNeeded!.Value + 1, runs);
        runs = 0;
        Assert.True(asked.Of(Unit, (_, _) => ++runs > 0));
        Assert.Equal(asked.HitsNeeded!.Value, runs);
    }

    [Fact]
    public void A_false_assurance_is_as_rare_as_the_confidence_says()
    {
        // The true probability is just below the one asked for: of 400 seeds at 95 %, 20 are expected; 34 or more come twice in a thousand.
        int wrong = Enumerable.Range(0, 400).Count(seed => new Assurance { Probability = 0.8, Cases = 200, Seed = (ulong)seed }.Of(Unit, (u, _) => u < 0.79999));
        Assert.InRange(wrong, 0, 33);
        Assert.Equal(0.00207, 1 - BinomialRank.AtMost(33, 400, 0.05), 1e-5);
    }

    /// <summary>The chances of all counts add up to one, and those of the last count are the power law.</summary>
    [Theory]
    [InlineData(1, 0.3)]
    [InlineData(40, 0.9)]
    [InlineData(400, 0.05)]
    public void At_most_all_of_all_cases_is_certain(long cases, double probability)
    {
        Assert.Equal(1, BinomialRank.AtMost(cases, cases, probability));
        Assert.Equal(Math.Pow(probability, cases), BinomialRank.AtMost(cases, cases, probability) - BinomialRank.AtMost(cases - 1, cases, probability), 1e-12);
    }

    [Fact]
    public void A_case_that_the_model_refuses_is_no_hit() =>
        Assert.False(new Assurance { Probability = 0.5, Cases = 100 }.Of(Unit, (u, _) => u < 0.5 ? true : throw new ArgumentException("no")));
}
