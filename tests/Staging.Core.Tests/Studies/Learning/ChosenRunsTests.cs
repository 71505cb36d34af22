using Staging.Core.Studies;

namespace Staging.Core.Tests.Studies.Learning;

/// <summary>Fewer runs than cases: those that are run stand for the others, and sums come out right whatever was guessed of them.</summary>
public class ChosenRunsTests
{
    private const int Cases = 16384, Runs = 1024;

    /// <summary>Five numbers in the unit interval, of which a sum, a product and a difference are observed with errors.</summary>
    private static readonly InputSet<double[]> Five = new(
        new double[5],
        [.. Enumerable.Range(0, 5).Select(d => new StudyInput<double[]>($"x{d}", "-", Distribution.Uniform(0, 1), (x, v) => [.. x[..d], v, .. x[(d + 1)..]]))]);

    private static readonly LearningStudy<double[]> Smooth = new()
    {
        Inputs = Five,
        Observations = ["sum", "product", "difference"],
        LogLikelihoods = (x, _) => [Error(x[0] + x[1], 1.5, 0.1), Error(x[1] * x[2], 0.3, 0.05), Error(x[3] - x[0], -0.4, 0.1)],
        Cases = Cases,
        EffectiveSample = 2,
    };

    /// <summary>What no polynomial can guess: half of a chessboard, in all dimensions.</summary>
    private static readonly LearningStudy<double[]> Chessboard = Smooth with
    {
        Observations = ["square"],
        LogLikelihoods = (x, _) => [x.Sum(v => (int)(4 * v)) % 2 == 0 ? 0 : -9],
    };

    private static double Error(double value, double seen, double error) => -0.5 * (value - seen) * (value - seen) / (error * error);

    public static TheoryData<bool> Kinds => [true, false];

    /// <summary>
    /// Over many seeds what the runs stand for is the number of all cases, and their summed likelihood that of all cases: each a ratio of 1
    /// within four standard errors, which are below 3 %.
    /// </summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Sums_over_the_cases_are_not_biased(bool smooth)
    {
        LearningStudy<double[]> study = (smooth ? Smooth : Chessboard) with { Cases = 4096 };
        const int Seeds = 48;
        double[] cases = new double[Seeds], likelihoods = new double[Seeds], evidences = new double[Seeds];
        for (int s = 0; s < Seeds; s++)
        {
            Posterior<double[]> chosen = (study with { Seed = (ulong)s, Runs = 512 }).Learn();
            double[] all = [.. Enumerable.Range(0, study.Cases).Select(i => Math.Exp(study.LogLikelihoods(chosen.At(i), default).Sum()))];
            cases[s] = Enumerable.Range(0, study.Cases).Sum(i => chosen.Shares[i]) / study.Cases;
            likelihoods[s] = all.Select((l, i) => chosen.Shares[i] * l).Sum() / all.Sum();
            evidences[s] = Math.Exp(chosen.LogEvidence) * study.Cases / all.Sum();
        }

        foreach (double[] ratios in (double[][])[cases, likelihoods, evidences])
        {
            double mean = ratios.Average(), error = Math.Sqrt(ratios.Sum(r => (r - mean) * (r - mean)) / (Seeds - 1) / Seeds);
            Assert.InRange(error, 0, 0.03);
            Assert.Equal(1, mean, 4 * error);
        }
    }

    [Fact]
    public void Runs_that_are_chosen_are_worth_several_times_as_many_that_are_not()
    {
        Posterior<double[]> chosen = (Smooth with { Runs = Runs }).Learn(), even = (Smooth with { Cases = Runs }).Learn();
        Assert.True(chosen.EffectiveSampleSize > 5 * even.EffectiveSampleSize, $"{chosen.EffectiveSampleSize} and {even.EffectiveSampleSize}");
        Assert.Equal(1, chosen.Exponent);
        Assert.InRange(chosen.Runs, 0.8 * Runs, Runs);
        Assert.Equal(Cases, chosen.Cases);
    }

    [Fact]
    public void Ranges_and_odds_are_those_of_all_cases_within_the_sampling()
    {
        Posterior<double[]> chosen = (Smooth with { Runs = Runs }).Learn(), all = Smooth.Learn();
        double inRank = 3 * 0.5 / Math.Sqrt(chosen.EffectiveSampleSize);
        foreach (string name in Five.Names.Select(n => n.Name))
        {
            Assert.InRange(chosen.Quantile(name, 0.5), all.Quantile(name, 0.5 - inRank), all.Quantile(name, 0.5 + inRank));
            Assert.Equal(all.Inputs.Single(i => i.Input.Name == name).Before.Low, chosen.Inputs.Single(i => i.Input.Name == name).Before.Low, 0.02);
        }

        LearnedOdds few = chosen.Odds((x, _) => x[2] > 0.5 ? 1 : 0), many = all.Odds((x, _) => x[2] > 0.5 ? 1 : 0);
        Assert.Equal(many.After, few.After, inRank);
        Assert.Equal(0.5, few.Before, 0.05);
        LearnedOdds fewer = chosen.Odds((x, _) => x[2] > 0.5 ? 1 : 0, runs: 400);
        Assert.Equal(0.5, fewer.Before, 0.02); // of a plain sample of 200, spread evenly
        Assert.Equal(many.After, fewer.After, 3 * 0.5 / Math.Sqrt(fewer.EffectiveSampleSize));
    }

    /// <summary>Three observations at once, and two and one on the same cases: the weights are products.</summary>
    [Fact]
    public void Further_observations_are_made_on_the_cases_that_were_run()
    {
        Posterior<double[]> first = (Only(0, 1) with { Runs = Runs }).Learn();
        int calls = 0;
        LearningStudy<double[]> third = Only(2);
        Posterior<double[]> both = first.And(third with { LogLikelihoods = Counting(third.LogLikelihoods, () => Interlocked.Increment(ref calls)) },
            null, null, default);
        Assert.Equal(first.Runs, calls);
        double[] weight = [.. Enumerable.Range(0, Cases).Select(i => first.Shares[i] * Math.Exp(Smooth.LogLikelihoods(first.At(i), default).Sum()))];
        double sum = weight.Sum();
        Assert.All(Enumerable.Range(0, Cases), i => Assert.Equal(weight[i] / sum, both.Weights.Span[i], 1e-12));
        Assert.Throws<ArgumentException>("other", () => first.And(Only(2).Learn()));
    }

    [Fact]
    public void As_many_runs_as_cases_or_more_run_every_case()
    {
        Posterior<double[]> all = (Smooth with { Cases = 512 }).Learn();
        foreach (int runs in (int[])[257, 512, 513, 100_000])
            Assert.Equal(all.Weights.ToArray(), (Smooth with { Cases = 512, Runs = runs }).Learn().Weights.ToArray());
        Assert.Equal(512, all.Runs);
        Assert.Equal(4096, (Smooth with { Cases = 4096, Runs = 100, Observations = [] }).Learn().EffectiveSampleSize);
    }

    [Fact]
    public void Threads_do_not_matter_and_progress_rises_to_the_end()
    {
        List<StudyProgress> heard = [];
        LearningStudy<double[]> study = Smooth with { Runs = Runs };
        Posterior<double[]> one = study.Learn(new StudyOptions { Threads = 1 }, new Listener(heard.Add));
        Assert.Equal(one.Weights.ToArray(), study.Learn(new StudyOptions { Threads = 5 }).Weights.ToArray());
        Assert.Equal(heard.Select(p => p.Done).Order(), heard.Select(p => p.Done));
        Assert.Equal((one.Runs, one.Runs), (heard[^1].Done, heard[^1].Total));
    }

    [Fact]
    public void Cases_that_the_model_refuses_are_counted_and_weigh_nothing()
    {
        LearningStudy<double[]> study = Smooth with { Runs = Runs };
        Posterior<double[]> learned = (study with
        {
            LogLikelihoods = (x, stop) => x[0] > 0.8 ? throw new ArgumentException("too wide") : study.LogLikelihoods(x, stop),
        }).Learn();
        Assert.InRange(learned.Refused, 1, Runs / 2);
        Assert.All(Enumerable.Range(0, Cases).Where(i => learned.At(i)[0] > 0.8), i => Assert.Equal(0, learned.Weights.Span[i]));
        Assert.Contains(learned.Findings, f => f.Code == "STU021");
    }

    [Fact]
    public void Parts_too_few_runs_and_more_than_memory_holds_are_refused()
    {
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => (Smooth with { Runs = Runs }).LearnInParts()).Findings);
        Assert.Equal("STU022", finding.Code);
        Assert.Contains("of 16384 cases that chooses 1024 runs", finding.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Smooth with { Runs = 99 });
        Assert.Equal("STU016", Assert.Single(Assert.Throws<InvalidModelException>(() => (Smooth with { Cases = 1 << 24, Runs = 100, Observations = [.. Enumerable.Range(0, 4).Select(k => $"{k}")] }).Learn()).Findings).Code);
        (Smooth with { Cases = 100, Runs = 100 }).LearnInParts();
    }

    [Fact]
    public void The_text_says_how_many_were_run()
    {
        Posterior<double[]> learned = (Smooth with { Runs = Runs }).Learn();
        Assert.Contains($"over 16384 cases, {learned.Runs} of them run: ", learned.ToString(), StringComparison.Ordinal);
    }

    private static Func<double[], CancellationToken, System.Collections.Immutable.ImmutableArray<double>> Counting(
        Func<double[], CancellationToken, System.Collections.Immutable.ImmutableArray<double>> logs, Action count) => (x, stop) =>
    {
        count();
        return logs(x, stop);
    };

    private static LearningStudy<double[]> Only(params int[] observations) => Smooth with
    {
        Observations = [.. observations.Select(j => Smooth.Observations[j])],
        LogLikelihoods = (x, stop) => [.. observations.Select(j => Smooth.LogLikelihoods(x, stop)[j])],
    };

    /// <summary>Where the likelihood is a bell that the guess meets, cases are best drawn by it: the chances taken leave about as great an effective number.</summary>
    [Fact]
    public void Chances_are_about_as_good_as_those_in_proportion_to_a_likelihood_that_is_known()
    {
        const int all = 4096, first = 512, runs = 300;
        var design = new SampleDesign(DesignKind.LatinHypercube, all, 2, 7);
        double[] logs = [.. Enumerable.Range(0, all).Select(i => -0.5 * (Math.Pow((design.Unit(i, 0) - 0.4) / 0.15, 2) + Math.Pow((design.Unit(i, 1) - 0.5) / 0.15, 2)))];
        double[] shares = [.. Enumerable.Repeat(1.0, all)];
        double[] chances = new WorthwhileCases(design, Enumerable.Range(0, first).ToDictionary(i => i, i => logs[i]), shares).Chances(first, runs);
        Assert.All(chances[..first], c => Assert.Equal(0, c));
        Assert.Equal(runs, chances.Sum(), 1e-6 * runs);
        double sum = logs.Skip(first).Sum(Math.Exp);
        Assert.True(Squares(i => chances[i]) < 1.1 * Squares(i => 0.15 * runs / (all - first) + 0.85 * runs * Math.Exp(logs[i]) / sum));

        double Squares(Func<int, double> chance) => Enumerable.Range(first, all - first).Sum(i => Math.Exp(2 * logs[i]) / Math.Min(1, chance(i)));
    }
}
