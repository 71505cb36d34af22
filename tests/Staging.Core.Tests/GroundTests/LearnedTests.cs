using System.Collections.Concurrent;
using Staging.Core.Gaps;
using Staging.Core.GroundTests;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Tests.GroundTests;

/// <summary>What a series teaches: each gap run once a case, doubt and discrepancy as stated, and nothing lost without a word.</summary>
public class LearnedTests
{
    internal static readonly GroundTest Lit = new() { Name = "lit", Gap = CheapGap.Of(120), Seen = Seen.Lit };

    internal static readonly GroundTest Parted = new() { Name = "parted", Gap = CheapGap.Of(250, 8), Seen = Seen.PartedFirst };

    internal static readonly GroundTest Timed = new() { Name = "timed", Gap = CheapGap.Of(250), Seen = Seen.Lit, Lit = At(22, 1) };

    private static readonly GroundTestSeries Three = Of(Lit, Parted, Timed);

    [Fact]
    public void Equal_designs_are_run_once_a_case()
    {
        var runs = new ConcurrentDictionary<GapProblem, int>();
        GroundTestSeries ten = Of([.. Enumerable.Range(0, 8).Select(i => Lit with { Name = $"again {i}" }), Parted, Timed]);
        Learned learned = CheapGap.Learn(ten, 200, answers: (p, m, s, c) =>
        {
            runs.AddOrUpdate(p, 1, (_, n) => n + 1);
            return CheapGap.Answer(p, m, s, c);
        });
        Assert.Equal(3 * 200, runs.Values.Sum());
        Assert.Equal(10, learned.Posterior.Observations.Length);
        // The same eight times is eight times as telling as once: not yet certain, for all may be wrong.
        Assert.True(learned.Posterior.Bits > CheapGap.Learn(Three, 200).Posterior.Bits);
    }

    [Fact]
    public void No_test_gives_the_prior_back_to_the_bit()
    {
        Learned nothing = CheapGap.Learn(Of(), 256);
        Assert.All(nothing.Posterior.Inputs, i => Assert.Equal((i.Before.Low, i.MedianBefore, i.Before.High), (i.After.Low, i.MedianAfter, i.After.High)));
        LearnedOdds odds = nothing.Odds(CheapGap.Of(250));
        Assert.Equal(odds.Before, odds.After);
        Assert.Empty(nothing.Findings);
        Assert.StartsWith("What 0 ground tests say over 256 cases: effective number 256, learned 0.00 bit", nothing.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Order_and_batching_do_not_matter()
    {
        Learned all = CheapGap.Learn(Three, 512), turned = CheapGap.Learn(Of(Timed, Lit, Parted), 512);
        Learned batches = CheapGap.Learn(Of(Parted), 512).And(Of(Timed)).And(Of(Lit));
        foreach (Learned other in (Learned[])[turned, batches])
        {
            Assert.All(all.Posterior.Weights.ToArray().Zip(other.Posterior.Weights.ToArray()), w => Assert.Equal(w.First, w.Second, 1e-14));
            Assert.Equal(all.Explained.Order().Select(e => Math.Round(e, 12)), other.Explained.Order().Select(e => Math.Round(e, 12)));
        }

        Assert.Equal(["parted", "timed", "lit"], batches.Series.Tests.Select(t => t.Name));
        Assert.Equal("TST006", Assert.Single(Assert.Throws<InvalidModelException>(() => all.And(Of(Lit))).Findings).Code);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Parts_merge_to_the_bits_of_the_whole(int parts)
    {
        PartitionedStudy<Learned> study = Three.LearnInParts(100, 3, CheapGap.Unknown, CheapGap.Answer);
        PartResult[] run = [.. Enumerable.Range(1, parts).Select(k => study.Run(new StudyOptions { Part = new StudyPart(k, parts), Threads = k % 2 + 1 }))];
        Learned merged = study.Of(PartResult.Merge([.. run]));
        Assert.Equal(CheapGap.Learn(Three, 100, 3).ToString(), merged.ToString());
        PartitionedStudy<Learned> other = Of(Lit, Parted, Timed with { Lit = At(23, 1) }).LearnInParts(100, 3, CheapGap.Unknown, CheapGap.Answer);
        Assert.Contains("another study", Assert.Throws<ArgumentException>(() => other.Of(PartResult.Merge([.. run]))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_that_the_model_calls_impossible_is_told_by_name_and_the_others_teach_as_before()
    {
        GroundTest cannot = new() { Name = "cannot be", Gap = CheapGap.Of(250, 200), Seen = Seen.PartedFirst };
        Learned with = CheapGap.Learn(Of(Lit, cannot, Timed), 512), without = CheapGap.Learn(Of(Lit, Timed), 512);
        ModelFinding finding = Assert.Single(with.Findings, f => f.Code == "TST010");
        Assert.Equal("cannot be", finding.Path);
        Assert.Contains("in none of 512 cases does it give what was seen (parted first)", finding.Message, StringComparison.Ordinal);
        Assert.Contains("cannot be", with.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, with.Explained[1], 1e-12);
        Assert.All(with.Posterior.Weights.ToArray().Zip(without.Posterior.Weights.ToArray()), w => Assert.Equal(w.First, w.Second, 1e-14));
        // A model that is never wrong has nothing left to say, and says which test it is.
        GroundTestSeries certain = Of(Lit, cannot) with { Discrepancy = ModelDiscrepancy.Judged with { WrongOutcome = 0 } };
        ModelFinding none = Assert.Single(Assert.Throws<InvalidModelException>(() => CheapGap.Learn(certain, 64)).Findings);
        Assert.Equal("STU017", none.Code);
        Assert.Contains("\"cannot be\" impossible", none.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_that_surprises_is_told()
    {
        GroundTestSeries most = Of([.. Enumerable.Range(0, 6).Select(i => Lit with { Name = $"lit {i}" }), Lit with { Name = "the odd one", Seen = Seen.PartedFirst }]);
        ModelFinding finding = Assert.Single(CheapGap.Learn(most, 512).Findings, f => f.Code == "TST011");
        Assert.Equal("the odd one", finding.Path);
    }

    /// <summary>Of two outcomes a record of doubt d and a model that errs by e leave e' = 1 - (1 - 3e/2)(1 - d) to chance.</summary>
    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(0.1, 0.4)]
    [InlineData(0, 0.9)]
    public void Doubt_and_discrepancy_weigh_an_outcome_as_stated(double wrong, double doubt)
    {
        var discrepancy = new ModelDiscrepancy { WrongOutcome = wrong };
        double silent = 1 - (1 - 1.5 * wrong) * (1 - doubt);
        GapAnswer answer = CheapGap.Answer(CheapGap.Of(120), Lit.Model, Lit.Solver, default);
        double Likelihood(Seen seen) => Math.Exp(new TestLikelihood(Lit with { Seen = seen, Doubt = doubt }, discrepancy).Log(answer));
        Assert.Equal(Ending.Lit, answer.Ending);
        Assert.Equal(1 - silent + silent / 3, Likelihood(Seen.Lit), 1e-12);
        Assert.Equal(silent / 3, Likelihood(Seen.PartedFirst), 1e-12);
        Assert.Equal(2 * silent / 3, Likelihood(Seen.NotLit), 1e-12);
        Assert.Equal(1, Likelihood(Seen.Unknown), 1e-12);
        Assert.Equal(1, Likelihood(Seen.Lit) + Likelihood(Seen.PartedFirst) + Likelihood(Seen.NotLitTogether), 1e-12);
        if (doubt == 0)
            Assert.Equal(wrong / 2, Likelihood(Seen.PartedFirst), 1e-12);
        Assert.Equal(Likelihood(Seen.Lit), TestLikelihood.Classes(answer.Ending, discrepancy, doubt)[0], 1e-12);
    }

    /// <summary>
    /// Where a run is not solved the tests can say nothing: such a case has no weight before and none after, and among the others all stays in proportion.
    /// </summary>
    [Fact]
    public void A_case_in_which_a_gap_is_not_solved_moves_nothing()
    {
        Learned whole = CheapGap.Learn(Three, 512), some = CheapGap.Learn(Three, 512, answers: SolvedUpTo(1.6));
        bool[] solved = [.. whole.Posterior.Values("joint.over-stated").ToArray().Select(force => force <= 1.6)];
        int lost = solved.Count(s => !s);
        Assert.InRange(lost, 100, 400);
        Assert.Equal(lost, some.Posterior.Refused);
        Assert.Contains($"refused {lost} of 512", Assert.Single(some.Findings, f => f.Code == "STU021").Message, StringComparison.Ordinal);
        double[] all = whole.Posterior.Weights.ToArray(), left = some.Posterior.Weights.ToArray();
        double share = all.Where((_, i) => solved[i]).Sum();
        Assert.All(Enumerable.Range(0, 512), i => Assert.Equal(solved[i] ? all[i] / share : 0, left[i], 1e-14));
        Assert.True(some.Posterior.Inputs[1].Before.High <= 1.6);
        ModelFinding none = Assert.Single(Assert.Throws<InvalidModelException>(() => CheapGap.Learn(Three, 64, answers: SolvedUpTo(0))).Findings);
        Assert.Contains("refuses every case. The first: The gap of \"lit\" was not solved.", none.Message, StringComparison.Ordinal);

        static GapAnswers SolvedUpTo(double factor) => (p, m, s, c) =>
            p.Design.Tube.Length.Millimeters > 130 || p.Design.Joint.Coupler.BreakawayForce.Newtons <= 20 * factor
            ? CheapGap.Answer(p, m, s, c)
            : CheapGap.Answer(p, m, s, c) with { Ending = null };
    }

    [Fact]
    public void A_time_weighs_by_its_own_error_and_that_of_the_model()
    {
        GapAnswer answer = CheapGap.Answer(CheapGap.Of(250, 60), Timed.Model, Timed.Solver, default);
        double lit = answer.Lit!.Value, silent = 0.15, sigma = Math.Sqrt(1e-6 + 0.09 * lit * lit), z = (0.022 - lit) / sigma;
        double expected = (1 - silent) * Math.Exp(-0.5 * z * z) / (sigma * Math.Sqrt(2 * Math.PI)) + silent / 3 / 0.2;
        Assert.Equal(expected, Math.Exp(new TestLikelihood(Timed, ModelDiscrepancy.Judged).Log(answer)), 1e-9 * expected);
        // What moves a joint once the upper motor burns is its exhaust: such a time says nothing.
        GroundTest both = Timed with { Parted = At(40, 1), JointMoves = At(39, 1) };
        Assert.Equal(expected / 0.04, Math.Exp(new TestLikelihood(both, ModelDiscrepancy.Judged).Log(answer)), 1e-9 * expected / 0.04);
    }

    [Fact]
    public void A_trace_narrows_what_its_pressure_depends_on_and_nothing_where_it_is_level_with_the_error()
    {
        double[] times = [.. Enumerable.Range(1, 30).Select(i => 1e-3 * i)];
        GroundTest gauged = new() { Name = "gauged", Gap = CheapGap.Of(250), Seen = Seen.Unknown, Pressure = MeasuredTrace.Of("gauge_Pa", [.. times], [.. times.Select(t => 8e4 * Math.Sin(100 * t))]) };
        LearnedInput joint = CheapGap.Learn(Of(gauged), 2048).Posterior.Inputs[1];
        Assert.True(joint.After.Holds(1.6), joint.ToString());
        Assert.InRange(joint.Narrowing, 0.2, 0.6);
        Assert.True(CheapGap.Learn(Of(gauged with { GaugeError = Pressure.FromKilopascals(400) }), 2048).Posterior.Inputs[1].Narrowing > 0.95);
        Assert.Equal(1, CheapGap.Learn(Of(gauged), 2048).Posterior.Inputs[0].Narrowing, 0.1);
    }

    [Fact]
    public void The_most_informative_test_is_the_one_whose_end_is_open_because_of_what_is_not_known()
    {
        Learned learned = CheapGap.Learn(Three, 512);
        GroundTest clear = Lit with { Name = "clear", Gap = CheapGap.Of(10, 200) }, open = Lit with { Name = "open", Gap = CheapGap.Of(400) };
        TestRanking ranking = learned.MostInformative([clear, open]);
        Assert.Equal(["open", "clear"], ranking.Tests.Select(t => t.Name));
        Assert.All(ranking.Tests, t => Assert.Equal(1, t.Probabilities.Sum(), 1e-12));
        Assert.Equal(0, ranking.Tests[1].Bits, 1e-9);
        Assert.StartsWith("  open ", ranking.ToString().Split('\n')[1], StringComparison.Ordinal);
        Assert.Equal("TST007", Assert.Single(Assert.Throws<InvalidModelException>(() => learned.MostInformative([])).Findings).Code);
    }

    /// <summary>The odds over an area are those of the gap with that area.</summary>
    [Fact]
    public void Odds_over_the_vent_area_are_those_of_each_gap()
    {
        var layout = new VentLayout { HoleCount = 2 };
        Axis areas = Axis.Factors("vent area", "mm2", 20, 80, 3);
        Learned learned = CheapGap.Learn(Three, 128, answers: (p, m, s, c) => CheapGap.Answer(
            p.With(breakaway: p.Design.Joint.Coupler.BreakawayForce * (p.Design.TotalVentArea.SquareMillimeters / 40)), m, s, c));
        SweepLine<LearnedOdds> odds = learned.VentOdds(CheapGap.Of(250), layout, areas);
        for (int i = 0; i < areas.Values.Length; i++)
        {
            LearnedOdds one = learned.Odds(CheapGap.Of(250).WithVents(layout, Area.FromSquareMillimeters(areas.Values[i])));
            Assert.Equal((one.Before, one.After), (odds.Results[i].Before, odds.Results[i].After));
        }

        Assert.True(odds.Results[0].After < odds.Results[2].After);
        Assert.Contains("mm2", Assert.Throws<ArgumentException>(() => learned.VentOdds(CheapGap.Of(250), layout, Axis.Even("area", "cm2", 1, 2, 3))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_study_takes_a_gap_as_it_is_believed_now()
    {
        Learned learned = CheapGap.Learn(Three, 512);
        InputSet<GapProblem> inputs = learned.Inputs(CheapGap.Of(120), 200);
        double lit = new ReliabilityStudy<GapProblem, GapAnswer>
        {
            Inputs = inputs,
            Model = (p, stop) => CheapGap.Answer(p, Lit.Model, Lit.Solver, stop),
            Outcome = a => a.Ending.ToString()!,
            Cases = 400,
            Design = DesignKind.LatinHypercube,
        }.Run().Probability("Lit").Estimate;
        Assert.Equal(learned.Odds(CheapGap.Of(120)).After, lit, 0.06);
    }

    private static GroundTestSeries Of(params GroundTest[] tests) => new() { Tests = [.. tests] };

    private static TimeSeen At(double ms, double within_ms) => new() { At = Duration.FromMilliseconds(ms), Within = Duration.FromMilliseconds(within_ms) };
}
