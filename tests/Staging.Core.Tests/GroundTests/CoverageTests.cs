using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.GroundTests;

/// <summary>A hundred invented series with planted truths: how often the ranges that are learned hold them.</summary>
public class CoverageTests
{
    private const int Series = 100, Cases = 1024;

    private static readonly GapProblem[] Gaps = [.. new double[] { 60, 120, 250, 460 }.Select(mm => CheapGap.Of(mm)), CheapGap.Of(250, 12), CheapGap.Of(250, 35)];

    private static readonly ModelDiscrepancy True = new() { WrongOutcome = 0.08, TimeSpread = 0.25 };

    [Fact]
    public void Ninety_per_cent_ranges_hold_the_planted_truth_nine_times_of_ten()
    {
        foreach (int held in Held(True))
        {
            Interval share = new Proportion(held, Series).ClopperPearson();
            Assert.True(share.Holds(0.9), $"{held} of {Series}: {share}");
        }
    }

    /// <summary>
    /// Learned as if the model told times within 2 % and hardly ever a wrong ending: the ignition temperature, which the times tell, is held
    /// by 71 of 100 ranges.
    /// </summary>
    [Fact]
    public void A_discrepancy_that_is_too_small_makes_the_ranges_too_narrow()
    {
        int ofIgnition = Held(True with { WrongOutcome = 0.001, TimeSpread = 0.02 })[0];
        Interval share = new Proportion(ofIgnition, Series).ClopperPearson(0.99);
        Assert.True(share.High < 0.9, $"{ofIgnition} of {Series}: {share}");
    }

    /// <summary>In how many series the range of each unknown holds its planted value.</summary>
    private static int[] Held(ModelDiscrepancy believed)
    {
        int[] held = new int[2];
        for (int s = 0; s < Series; s++)
        {
            var draws = new CaseDraws(2026, (ulong)s);
            double[] truth = [CheapGap.Ignition.Spread.Quantile(draws.Uniform(0)), CheapGap.Joint.Spread.Quantile(draws.Uniform(1))];
            GroundTest[] tests = [.. Enumerable.Range(0, 10).Select(k => Invent(k, truth, new CaseDraws((ulong)s + 1000, (ulong)k)))];
            Learned learned = CheapGap.Learn(new GroundTestSeries { Tests = [.. tests], Discrepancy = believed }, Cases, (ulong)s, options: new StudyOptions { Threads = 1 });
            for (int d = 0; d < held.Length; d++)
                held[d] += learned.Posterior.Inputs[d].After.Holds(truth[d]) ? 1 : 0;
        }

        return held;
    }

    /// <summary>A test as the likelihood takes it to come about: the model and its spread, or now and then anything.</summary>
    private static GroundTest Invent(int k, double[] truth, CaseDraws draws)
    {
        GapProblem gap = Gaps[k % Gaps.Length], planted = CheapGap.Joint.With(CheapGap.Ignition.With(gap, truth[0]), truth[1]);
        GapAnswer answer = CheapGap.Answer(planted, new GapModel.TwoZone(), SolverOptions.ForGaps, default);
        bool silent = draws.Uniform(0) < 1.5 * True.WrongOutcome;
        Ending ending = silent ? (Ending)(int)(3 * draws.Uniform(1)) : answer.Ending!.Value;
        double within = 0.001, time = silent ? gap.Horizon.Seconds * draws.Uniform(2) : Spread(ending == Ending.Lit ? answer.Lit : answer.Parted);
        var seen = new TimeSeen { At = Duration.FromSeconds(Math.Max(time, 1e-6)), Within = Duration.FromSeconds(within) };
        return new GroundTest
        {
            Name = $"test {k}",
            Gap = gap,
            Seen = ending switch { Ending.Lit => Seen.Lit, Ending.Parted => Seen.PartedFirst, _ => Seen.NotLitTogether },
            Lit = ending == Ending.Lit ? seen : null,
            Parted = ending == Ending.Parted ? seen : null,
        };

        double Spread(double? t) => t is { } at ? at + Math.Sqrt(within * within + Math.Pow(True.TimeSpread * at, 2)) * draws.Normal(3) : 1;
    }

}
