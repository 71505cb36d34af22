using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Solving;
using Staging.Core.Studies;
using static Staging.Core.Tests.GroundTests.LearnedTests;

namespace Staging.Core.Tests.GroundTests;

/// <summary>A series learned with fewer runs than cases.</summary>
public class FewRunsTests
{
    /// <summary>A hundred thousand cases of ten tests with few runs: the ranges are those of all cases within the sampling.</summary>
    [Fact]
    public void Few_runs_of_many_cases_learn_what_all_would()
    {
        int calls = 0;
        GroundTestSeries ten = Of([.. Enumerable.Range(0, 10).Select(k => (k % 3 == 0 ? Lit : k % 3 == 1 ? Parted : Timed) with { Name = $"{k}" })]);
        Learned few = ten.LearnBy(100_000, 1, 2000, CheapGap.Unknown, Counted, null, null, default), all = CheapGap.Learn(ten, 100_000, 1);
        Assert.InRange(few.Posterior.Runs, 1500, 2000);
        Assert.Equal(few.Posterior.Runs * ten.Tests.DistinctBy(t => t.Gap).Count(), calls);
        Assert.Equal(1, few.Posterior.Exponent);
        double inRank = 3 * 0.5 / Math.Sqrt(few.Posterior.EffectiveSampleSize);
        foreach (LearnedInput input in few.Posterior.Inputs)
        {
            string name = input.Input.Name;
            Assert.InRange(input.MedianAfter, all.Posterior.Quantile(name, 0.5 - inRank), all.Posterior.Quantile(name, 0.5 + inRank));
        }

        GapAnswer Counted(GapProblem p, GapModel m, SolverOptions s, CancellationToken c)
        {
            Interlocked.Increment(ref calls);
            return CheapGap.Answer(p, m, s, c);
        }
    }

    [Fact]
    public void Further_tests_are_run_on_the_cases_that_were_run_and_keep_their_own_discrepancy()
    {
        Learned first = Of(Lit, Timed).LearnBy(4096, 0, 400, CheapGap.Unknown, CheapGap.Answer, null, null, default);
        var doubted = new ModelDiscrepancy { WrongOutcome = 0.4 };
        Learned both = first.And(Of(Parted) with { Discrepancy = doubted });
        Assert.Equal(first.Posterior.Runs, both.Posterior.Runs);
        Assert.All(Enumerable.Range(0, 4096).Where(i => first.Posterior.Weights.Span[i] == 0), i => Assert.Equal(0, both.Posterior.Weights.Span[i]));
        double silence = new TestLikelihood(Parted, doubted).LogOfSilence;
        Assert.Equal(both.Posterior.MeanOver(2, l => 1 - Math.Exp(silence - l)), both.Explained[2]);
    }

    private static GroundTestSeries Of(params GroundTest[] tests) => new() { Tests = [.. tests] };
}
