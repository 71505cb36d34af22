using System.Collections.Immutable;
using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies.Learning;

/// <summary>What observations say of inputs: the prior where there are none, the same bits in any order of work, and refusals with reasons.</summary>
public class LearningStudyTests
{
    private static readonly (string, int, int)[] Three = [("monday", 7, 3), ("tuesday", 4, 6), ("friday", 9, 2)];

    [Fact]
    public void No_observation_gives_the_prior_back_to_the_bit()
    {
        Posterior<Coin> nothing = Coin.Tossed(1000).Learn();
        Assert.Equal((1000, 1, 0, 0), (nothing.EffectiveSampleSize, nothing.Exponent, nothing.Bits, nothing.LogEvidence));
        Assert.All(nothing.Inputs, i => Assert.Equal((i.Before.Low, i.MedianBefore, i.Before.High), (i.After.Low, i.MedianAfter, i.After.High)));
        Assert.All(nothing.Inputs, i => Assert.Equal((0, 1), (i.Bits, i.Narrowing)));
        Assert.All(nothing.Weights.ToArray(), w => Assert.Equal(0.001, w));
        Assert.Empty(nothing.Findings);
        Assert.Equal(0.05, nothing.Quantile("first", 0.05), 1e-3);
        Assert.Equal(Coin.Inputs.Inputs[1].Spread.Quantile(0.3), nothing.Quantile("second", 0.3), 2e-3);
    }

    [Fact]
    public void An_observation_that_says_nothing_changes_nothing()
    {
        LearningStudy<Coin> study = Coin.Tossed(1024) with { Observations = ["blind"], LogLikelihoods = (_, _) => [-7.5] };
        Posterior<Coin> learned = study.Learn();
        Assert.Equal((1024, 0), (learned.EffectiveSampleSize, learned.Bits));
        Assert.Equal(-7.5, learned.LogEvidence, 1e-12);
        Assert.All(learned.Inputs, i => Assert.Equal((i.Before.Low, i.Before.High), (i.After.Low, i.After.High)));
    }

    [Fact]
    public void Order_and_batches_do_not_matter()
    {
        Posterior<Coin> all = Coin.Tossed(512, Three).Learn();
        Posterior<Coin> turned = Coin.Tossed(512, Three[2], Three[0], Three[1]).Learn();
        Posterior<Coin> batches = Coin.Tossed(512, Three[1]).Learn().And(Coin.Tossed(512, Three[2], Three[0]).Learn());
        Posterior<Coin> fromNothing = Coin.Tossed(512).Learn().And(all);
        foreach (Posterior<Coin> other in (Posterior<Coin>[])[turned, batches, fromNothing])
        {
            Assert.All(all.Weights.ToArray().Zip(other.Weights.ToArray()), w => Assert.Equal(w.First, w.Second, 1e-14));
            Assert.Equal(all.LogEvidence, other.LogEvidence, 1e-12);
            Assert.All(all.Inputs.Zip(other.Inputs), p => Assert.Equal(p.First.After.Low, p.Second.After.Low, 1e-12));
            foreach (LearnedObservation o in all.Observations)
                Assert.Equal(o.BitsGivenOthers, other.Observations.Single(x => x.Name == o.Name).BitsGivenOthers, 1e-12);
        }
    }

    [Fact]
    public void Batches_of_other_cases_or_the_same_observation_twice_are_refused()
    {
        Posterior<Coin> one = Coin.Tossed(64, Three[0]).Learn();
        Assert.Throws<ArgumentException>("other", () => one.And(Coin.Tossed(65, Three[1]).Learn()));
        Assert.Throws<ArgumentException>("other", () => one.And((Coin.Tossed(64, Three[1]) with { Seed = 4 }).Learn()));
        Assert.Equal("STU002", Assert.Single(Assert.Throws<InvalidModelException>(() => one.And(one)).Findings).Code);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(7)]
    public void Parts_merge_to_the_bits_of_the_whole_through_text(int parts)
    {
        LearningStudy<Coin> study = Coin.Tossed(200, Three) with { LogLikelihoods = HalfImpossible };
        PartitionedStudy<Posterior<Coin>> inParts = study.LearnInParts();
        ImmutableArray<PartResult> run = [.. Enumerable.Range(1, parts).Reverse()
            .Select(k => Reread(inParts.Run(new StudyOptions { Part = new StudyPart(k, parts), Threads = 1 + k % 2 })))];
        Posterior<Coin> whole = study.Learn(new StudyOptions { Threads = 2 }), merged = inParts.Of(PartResult.Merge(run));
        Assert.Equal(whole.Weights.ToArray(), merged.Weights.ToArray());
        Assert.Equal(whole.ToString(), merged.ToString());
        Assert.Contains(whole.Weights.ToArray(), w => w == 0);
    }

    [Fact]
    public void The_model_is_asked_once_a_case_and_never_without_observations()
    {
        int calls = 0;
        LearningStudy<Coin> study = Coin.Tossed(300, Three);
        LearningStudy<Coin> counted = study with
        {
            LogLikelihoods = (coin, stop) =>
            {
                Interlocked.Increment(ref calls);
                return study.LogLikelihoods(coin, stop);
            },
        };
        Posterior<Coin> learned = counted.Learn();
        _ = (learned.ToString(), learned.Values("first"), learned.Bits, learned.Quantile("second", 0.5));
        Assert.Equal(300, calls);
        (counted with { Observations = [] }).Learn();
        Assert.Equal(300, calls);
    }

    [Fact]
    public void What_the_model_calls_impossible_is_refused_by_name()
    {
        LearningStudy<Coin> study = Coin.Tossed(64, Three) with { LogLikelihoods = (c, _) => [Math.Log(c.First), double.NegativeInfinity, 0] };
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => study.Learn()).Findings);
        Assert.Equal("STU017", finding.Code);
        Assert.Contains("the model calls \"tuesday\" impossible in each of 64 cases", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("monday", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Observations_that_contradict_each_other_are_refused_with_the_cases_that_allow_each()
    {
        LearningStudy<Coin> study = Coin.Tossed(64, Three) with
        {
            LogLikelihoods = (c, _) => [c.First > 0.5 ? 0 : double.NegativeInfinity, c.First < 0.25 ? 0 : double.NegativeInfinity, 0],
        };
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => study.Learn()).Findings);
        Assert.Equal("STU017", finding.Code);
        Assert.Contains("of 64 cases, \"tuesday\" in 16, \"monday\" in 32, \"friday\" in 64", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Sharp_observations_are_raised_to_a_power_that_is_stated()
    {
        Posterior<Coin> learned = Coin.Tossed(512, ("many", 700, 300)).Learn();
        Assert.InRange(learned.Exponent, 0.02, 0.99);
        Assert.Equal(51.2, learned.EffectiveSampleSize, 1e-3); // a tenth of the cases
        ModelFinding finding = Assert.Single(learned.Findings, f => f.Code == "STU019");
        Assert.Contains(FormattableString.Invariant($"the power {learned.Exponent:F3}"), finding.Message, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"to the power {learned.Exponent:F3}"), learned.ToString(), StringComparison.Ordinal);
        // The power widens and does not shift: 0.7 is where it was.
        Assert.True(learned.Inputs[0].After.Holds(0.7));
        Assert.Equal(0.7, learned.Inputs[0].MedianAfter, 0.02);
        Posterior<Coin> more = Coin.Tossed(16_384, ("many", 700, 300)).Learn();
        Assert.Equal(1, more.Exponent);
        Assert.True(more.Inputs[0].After.HalfWidth < learned.Inputs[0].After.HalfWidth);
    }

    [Fact]
    public void Observations_too_sharp_for_any_power_are_refused()
    {
        LearningStudy<Coin> study = Coin.Tossed(512, ("hopeless", 0, 0), ("mild", 0, 0)) with
        {
            LogLikelihoods = (c, _) => [-1e9 * (c.First - 0.5) * (c.First - 0.5), 0],
        };
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => study.Learn()).Findings);
        Assert.Equal("STU018", finding.Code);
        Assert.Contains("Alone they leave: \"hopeless\" 1.0, \"mild\" 512.0", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_that_the_model_refuses_has_no_weight_and_is_counted()
    {
        LearningStudy<Coin> study = Coin.Tossed(400, ("one", 1, 0)) with
        {
            LogLikelihoods = (c, _) => c.First < 0.25 ? throw new ArgumentException("too light") : [Math.Log(c.First)],
        };
        Posterior<Coin> learned = study.Learn();
        Assert.Equal(100, learned.Refused);
        Assert.InRange(learned.Inputs[0].Before.Low, 0.25, 0.32);
        Assert.Contains(learned.Findings, f => f.Code == "STU021");
        LearnedOdds heads = learned.Odds((c, _) => c.First);
        Assert.Equal(0.625, heads.Before, 0.002);
        ModelFinding none = Assert.Single(Assert.Throws<InvalidModelException>(
            () => (study with { LogLikelihoods = (_, _) => throw new ArgumentException("no coin") }).Learn()).Findings);
        Assert.Equal(("STU017", "The model refuses every case. The first: no coin"), (none.Code, none.Message));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_log_likelihood_that_is_none_ends_the_study(double log) =>
        Assert.Contains("\"a\" in case 0", Assert.Throws<ArithmeticException>(() => (Coin.Tossed(8, ("a", 0, 0)) with { LogLikelihoods = (_, _) => [log] }).Learn()).Message, StringComparison.Ordinal);

    [Fact]
    public void Bad_studies_are_refused()
    {
        Assert.Throws<ArithmeticException>(() => (Coin.Tossed(8, ("a", 0, 0)) with { LogLikelihoods = (_, _) => [0, 0] }).Learn());
        Assert.Equal("STU002", Assert.Single(Coin.Tossed(8, ("a", 1, 1), ("a", 2, 2)).Check()).Code);
        Assert.Throws<ArgumentException>(() => Coin.Tossed(8, ("a, b", 1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Coin.Tossed(1));
        Assert.Throws<ArgumentException>("input", () => Coin.Tossed(8).Learn().Values("third"));
        var many = new InputSet<Coin>(new Coin(0, 0), [.. Enumerable.Range(0, 41)
            .Select(i => new StudyInput<Coin>($"x{i}", "-", Distribution.Uniform(0, 1), (c, v) => c with { First = v }))]);
        Assert.Equal("STU005", Assert.Single((Coin.Tossed(8) with { Inputs = many }).Check()).Code);
        Assert.Equal("STU007", Assert.Single(Assert.Throws<InvalidModelException>(() => Coin.Tossed(8).Learn(new StudyOptions { Part = new StudyPart(1, 2) })).Findings).Code);
    }

    private static ImmutableArray<double> HalfImpossible(Coin coin, CancellationToken stop) =>
        [Coin.Log(coin.First, 7, 3), coin.Second < 0.5 ? Coin.Log(coin.First, 4, 6) : double.NegativeInfinity, 1.0 / 3];

    private static PartResult Reread(PartResult part)
    {
        using var text = new StringWriter();
        part.Write(text);
        using var reader = new StringReader(text.ToString());
        return PartResult.Read(reader);
    }
}
