using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies.Learning;

/// <summary>What can be asked of a posterior: odds before and after, what the next observation would teach, what cannot be told apart.</summary>
public class PosteriorTests
{
    private static readonly Posterior<Coin> Seven = Coin.Tossed(4096, ("ten", 7, 3)).Learn();

    /// <summary>The rule of succession: (heads + 1)/(tosses + 2).</summary>
    [Fact]
    public void The_odds_of_the_next_toss_follow_the_rule_of_succession()
    {
        LearnedOdds heads = Seven.Odds((c, _) => c.First);
        Assert.Equal(0.5, heads.Before, 1.0 / 4096);
        Assert.Equal(8.0 / 12, heads.After, 1e-4);
        Assert.True(heads.AfterAt95.Holds(heads.After));
        Assert.Equal(Seven.EffectiveSampleSize, heads.EffectiveSampleSize);
        Assert.Equal(0, heads.Refused);
        Assert.Contains("before, 0.667 (", heads.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Fewer_runs_give_the_same_odds_within_their_wider_interval()
    {
        int calls = 0;
        LearnedOdds few = Seven.Odds((c, _) => Count(c.First), runs: 400);
        Assert.InRange(calls, 200, 400);
        Assert.Equal(8.0 / 12, few.After, 0.028); // three standard errors of 200 draws from Beta(8, 4)
        Assert.Equal(0.5, few.Before, 0.005);
        Assert.InRange(few.EffectiveSampleSize, 150, 200);
        calls = 0;
        Seven.Odds((c, _) => Count(c.First));
        Assert.Equal(4096, calls);

        double Count(double p)
        {
            Interlocked.Increment(ref calls);
            return p;
        }
    }

    [Fact]
    public void Odds_along_an_axis_are_those_at_each_value()
    {
        Axis least = Axis.Even("least", "-", 0.2, 0.8, 4);
        SweepLine<LearnedOdds> line = Seven.OddsAlong(least, (c, x, _) => c.First >= x ? 1 : 0, options: new StudyOptions { Threads = 2 });
        Assert.All(least.Values, x => Assert.Equal(Seven.Odds((c, _) => c.First >= x ? 1 : 0).After, line.Results[least.Values.Items.IndexOf(x)].After));
        Assert.All(line.Results.Zip(line.Results.Skip(1)), p => Assert.True(p.First.After >= p.Second.After));
    }

    [Fact]
    public void Refusals_count_against_and_bad_probabilities_end_the_question()
    {
        LearnedOdds odds = Seven.Odds((c, _) => c.First < 0.5 ? throw new ArgumentException("no") : 1);
        Assert.Equal(2048, odds.Refused);
        Assert.Equal(0.5, odds.Before, 1e-12);
        Assert.Throws<ArithmeticException>(() => Seven.Odds((_, _) => 1.01));
        Assert.Throws<ArithmeticException>(() => Seven.Odds((_, _) => double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("runs", () => Seven.Odds((_, _) => 1, runs: 9));
        Assert.Throws<ArithmeticException>(() => Seven.Information("x", (_, _) => [0.5, 0.4]));
        foreach (string name in (string[])[" ", "a\u001b[2J"])
            Assert.Equal("name", Assert.Throws<ArgumentException>(() => Seven.Information(name, (_, _) => [1])).ParamName);
        Assert.Throws<ArithmeticException>(() => Seven.Information("x", (c, _) => c.First < 0.5 ? [1] : [0.5, 0.5]));
    }

    /// <summary>An outcome that the inputs decide alone tells as much as it is uncertain; one that does not depend on them tells nothing.</summary>
    [Fact]
    public void What_an_observation_would_teach_is_the_uncertainty_that_inputs_explain()
    {
        double share = Seven.Odds((c, _) => c.First > 0.7 ? 1 : 0).After;
        ExpectedInformation decided = Seven.Information("decided", (c, _) => c.First > 0.7 ? [1, 0] : [0, 1]);
        Assert.Equal(-share * Math.Log2(share) - (1 - share) * Math.Log2(1 - share), decided.Bits, 1e-12);
        Assert.Equal(share, decided.Probabilities[0], 1e-12);
        Assert.Equal(0, Seven.Information("coin of another", (_, _) => [0.5, 0.5]).Bits, 1e-12);
        ExpectedInformation sooner = Coin.Tossed(4096).Learn().Information("a toss", (c, _) => [c.First, 1 - c.First]);
        ExpectedInformation later = Seven.Information("a toss", (c, _) => [c.First, 1 - c.First]);
        Assert.True(sooner.Bits > later.Bits);
        Assert.Equal(later.Bits, Seven.Information("a toss", (c, _) => [c.First, 1 - c.First], runs: 500).Bits, 0.01);
    }

    /// <summary>Only the sum of two inputs is seen: one may stand for the other, and both are named.</summary>
    [Fact]
    public void What_cannot_be_told_apart_is_named()
    {
        Posterior<Coin> learned = (Coin.Tossed(4096, ("sum", 0, 0)) with
        {
            LogLikelihoods = (c, _) => [-0.5 * Math.Pow((c.First + c.Second - 0.9) / 0.1, 2)],
        }).Learn();
        Assert.True(learned.Correlation[1] < -0.8, $"{learned.Correlation[1]}");
        Assert.Equal(learned.Correlation[1], learned.Correlation[2]);
        Assert.Equal(1, learned.Correlation[0], 1e-12);
        ModelFinding pair = Assert.Single(learned.Findings);
        Assert.Equal(("STU020", "first, second", FindingSeverity.Note), (pair.Code, pair.Path, pair.Severity));
        Assert.Equal(0, Seven.Correlation[1], 0.05);
    }

    /// <summary>Of three inputs the last two trade: they are named, and no other pair.</summary>
    [Fact]
    public void Of_three_inputs_the_two_that_trade_are_named()
    {
        static StudyInput<(double A, double B, double C)> Input(string name, Func<(double A, double B, double C), double, (double A, double B, double C)> with) =>
            new(name, "-", Distribution.Uniform(0, 1), with);
        Posterior<(double A, double B, double C)> learned = new LearningStudy<(double A, double B, double C)>
        {
            Inputs = new((0.5, 0.5, 0.5), Input("a", (m, v) => m with { A = v }), Input("b", (m, v) => m with { B = v }), Input("c", (m, v) => m with { C = v })),
            Observations = ["sum"],
            LogLikelihoods = (m, _) => [-0.5 * Math.Pow((m.B + m.C - 0.9) / 0.1, 2)],
            Cases = 4096,
            Seed = 3,
        }.Learn();
        Assert.Equal("b, c", Assert.Single(learned.Findings).Path);
    }

    /// <summary>The observation of a coin tells nothing of the other coin.</summary>
    [Fact]
    public void What_was_learned_belongs_to_the_input_it_is_about()
    {
        // Of Beta(8, 4) against the even distribution: -ln B(8, 4) + 7 (psi(8) - psi(12)) + 3 (psi(4) - psi(12)) nats.
        double nats = Math.Log(1320) + 7 * -(1 / 8.0 + 1 / 9.0 + 1 / 10.0 + 1 / 11.0) + 3 * -Enumerable.Range(4, 8).Sum(k => 1.0 / k);
        Assert.Equal(nats / Math.Log(2), Seven.Bits, 1e-3);
        Assert.Equal(Seven.Bits, Seven.Inputs[0].Bits, 0.04); // 16 bins tell a little less
        Assert.Equal(0, Seven.Inputs[1].Bits, 0.01);
        Assert.Equal(1, Seven.Inputs[1].Narrowing, 0.03);
        Assert.InRange(Seven.Inputs[0].Narrowing, 0.4, 0.6);
    }

    [Fact]
    public void Observations_tell_what_they_taught_alone_and_beside_the_others()
    {
        Posterior<Coin> both = Coin.Tossed(4096, ("a", 7, 3), ("b", 7, 3), ("odd", 0, 4)).Learn();
        LearnedObservation a = both.Observations[0], odd = both.Observations[2];
        Assert.Equal(Seven.Bits, a.BitsAlone, 1e-12);
        Assert.Equal(1.0 / 1320, a.Alone, 1e-6); // B(8, 4)
        Assert.True(a.GivenOthers > a.Alone);
        Assert.Equal(0.2, odd.Alone, 1e-3); // B(1, 5)
        Assert.True(odd.GivenOthers < 0.1 * odd.Alone);
        Assert.Equal(7 * Math.Log(0.7) + 3 * Math.Log(0.3), a.LogBest, 1e-5);
        Assert.Contains("taught", a.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_studies_take_the_posterior_with_what_inputs_have_to_do_with_one_another()
    {
        Posterior<Coin> learned = (Coin.Tossed(4096, ("sum", 0, 0)) with
        {
            LogLikelihoods = (c, _) => [-0.5 * Math.Pow((c.First + c.Second - 0.9) / 0.05, 2)],
        }).Learn();
        ReliabilityRun run = new ReliabilityStudy<Coin, double>
        {
            Inputs = learned.Resampled(1000),
            Model = (c, _) => c.First + c.Second,
            Outcome = sum => sum > 0.9 ? "more" : "less",
            Measures = [new Measure<double>("sum", "-", s => s)],
            Cases = 2000,
            Design = DesignKind.LatinHypercube,
        }.Run();
        Assert.Equal(0.05, run.Measure("sum").StandardDeviation!.Value, 0.005);
        Assert.Equal(learned.Odds((c, _) => c.First + c.Second > 0.9 ? 1 : 0).After, run.Probability("more").Estimate, 0.03);
    }
}
