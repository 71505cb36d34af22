using System.Collections.Immutable;
using System.Text.Json;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Flight;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Plans;
using Staging.Core.Tests.Studies;
using UnitsNet;

namespace Staging.Core.Tests.Reviews;

/// <summary>How often a plan lights when what is judged of its gaps is uncertain.</summary>
public class OddsTests
{
    private static readonly StagingPlan Demo = DemoPlan.Plan;

    private static readonly Odds Few = Demo.Odds(cases: 32, seed: 7, new StudyOptions { Threads = 1 });

    [Fact]
    public void A_seed_gives_the_same_bits_on_any_number_of_threads()
    {
        Odds two = Demo.Odds(cases: 32, seed: 7, new StudyOptions { Threads = 2 });
        Assert.Equal(Csv(Few), Csv(two));
        Assert.Equal(Few.ToString(), two.ToString());
        Assert.Equal(Few.WhatMatters().ToString(), two.WhatMatters().ToString());
        Assert.NotEqual(Csv(Few), Csv(Demo.Odds(cases: 32, seed: 8)));
    }

    /// <summary>Each case is the plan with its values put in by hand: a review of that plan tells the same margin and the same end.</summary>
    [Fact]
    public void A_case_is_a_review_of_the_plan_with_the_values_of_the_case()
    {
        CaseColumns columns = Few.Run.Columns();
        NumberColumn margin = columns.Measures.Single(m => m.Name.Name == "margin"), apogee = columns.Measures.Single(m => m.Name.Name == "apogee");
        foreach (int row in (int[])[0, 11])
        {
            StagingPlan plan = OddsStudy.OfCases(Demo); // integrated as finely as the cases are
            for (int i = 0; i < GapInputs.Judged.Length; i++)
                plan = GapInputs.Judged[i].Below("sustainer").With(plan, columns.Inputs[i].Values.Span[row]);
            StagingReview review = plan.Review(cases: 0);
            GapRun run = Assert.Single(review.Gaps).Run;
            Assert.Equal(run.PeakGrainSurface.Kelvins - run.Problem.Design.Grain.IgnitionTemperature.Kelvins, margin.At(row));
            Assert.Equal(review.Flight.Apogee!.Value.Meters, apogee.At(row));
            Assert.Equal(review.EveryStageLights, margin.At(row) >= 0);
            Assert.Equal(review.EveryStageLights ? "every stage lights" : "sustainer stays cold", columns.Outcome[row]);
        }
    }

    [Fact]
    public void The_shares_are_those_of_the_cases()
    {
        CaseColumns columns = Few.Run.Columns();
        int lit = columns.Outcome.Count(o => o == "every stage lights");
        Assert.InRange(lit, 1, 31);
        Assert.Equal(new Proportion(lit, 32), Few.EveryStageLights);
        Assert.Equal(new Proportion(lit, 32), Assert.Single(Few.Stages).Lights);
        Assert.Equal(GapInputs.Judged.Select(i => i.Path), Few.Run.Inputs.Select(i => i.Name));
        Assert.Empty(Few.NotVaried);
        Interval at95 = Few.EveryStageLights.Wilson();
        Assert.Contains(FormattableString.Invariant($"{100 * at95.Low:F1} to {100 * at95.High:F1} % at 95 %"), Few.ToString(), StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"50 % below {Few.Margin.Percentile(50).Value:F0}"), Few.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_matters_most_is_the_heat_that_particles_bring()
    {
        InputRanking ranking = Demo.Odds(cases: 120).WhatMatters();
        Assert.Equal(GapInputs.Judged.Length, ranking.Inputs.Length);
        Assert.Equal("closures.particle-efficiency", ranking.Inputs[0].Input.Name);
        Assert.True(ranking.Inputs[0].Interval.Low > 0.3);
        // A grain that ignites later has less margin, a joint that holds longer has more; how fast the pieces fly hardly moves the surface.
        RankedInput ignition = ranking.Inputs.Single(i => i.Input.Name == "grain.ignition"), joint = ranking.Inputs.Single(i => i.Input.Name == "joint.breakaway"), speed = ranking.Inputs.Single(i => i.Input.Name == "source.piece-speed");
        Assert.True(ignition.Correlation < 0);
        Assert.True(joint.Interval.Low > 0.1);
        Assert.True(speed.Interval.Holds(0));
        Assert.Equal(ranking.Inputs.Select(i => Math.Abs(i.Correlation)).OrderDescending(), ranking.Inputs.Select(i => Math.Abs(i.Correlation)));
        Assert.Equal(ranking.Inputs.Length + 1, ranking.ToString().Split('\n').Length);
    }

    /// <summary>A source that feeds hot gas for long, through a short gap with ample vents: the judged inputs that are left cannot keep the grain cold.</summary>
    [Fact]
    public void A_plan_whose_inputs_cannot_matter_lights_always()
    {
        Odds odds = TestPlans.Through(Sure).Odds(cases: 24);
        Assert.Equal((24, 24), (odds.EveryStageLights.Hits, odds.EveryStageLights.Cases));
        Assert.Equal(1, odds.EveryStageLights.Estimate);
        Assert.Contains("every stage lights in 100.0 % (24 of 24;", odds.ToString(), StringComparison.Ordinal);
        // Its source is a table, to which the judged numbers of a motor do not belong: that is told. Only its gas fraction is judged.
        Assert.Equal(["the source below sustainer"], odds.NotVaried);
        Assert.Contains("not varied", odds.ToString(), StringComparison.Ordinal);
        Assert.Equal(["source.gas-fraction"], odds.Run.Inputs.Select(i => i.Name).Where(n => n.StartsWith("source.", StringComparison.Ordinal)));
    }

    [Fact]
    public void Two_gaps_share_the_closures_and_nothing_else()
    {
        StageIgnition gap = new StageIgnition.ByGap { Gap = new GapIgnition { Design = TestPlans.Lighting, Layout = TestPlans.Layout, HolePressureCoefficient = 0 } };
        StagingPlan three = TestPlans.Of(TestFlights.Plan(TestFlights.Booster(), TestFlights.Booster("middle", gap), TestFlights.Sustainer(gap)));
        Odds odds = three.Odds(cases: 24);
        string[] names = [.. odds.Run.Inputs.Select(i => i.Name)];
        Assert.Single(names, "closures.particle-efficiency");
        Assert.Contains("stage-2.joint.breakaway", names);
        Assert.Contains("stage-3.joint.breakaway", names);
        ImmutableArray<StudyInput<GapProblem>> judged = GapInputs.JudgedFor(TestPlans.Lighting);
        int shared = judged.Count(i => i.Path.StartsWith("closures.", StringComparison.Ordinal));
        Assert.Equal(shared + 2 * (judged.Length - shared), names.Length);
        Assert.Equal(["middle", "sustainer"], odds.Stages.Select(s => s.Stage));
        Assert.True(odds.Stages[0].Lights.Hits >= odds.Stages[1].Lights.Hits);
        Assert.Equal(odds.Stages[1].Lights, odds.EveryStageLights);
        // The upper gap has a margin in the cases that came to it, which are those in which the stage below lit.
        Assert.Equal(odds.Stages[0].Lights.Hits, odds.Stages[1].Margin!.Count);
        Assert.Equal(24, odds.Margin.Count);
    }

    /// <summary>A gap that was not solved is neither lit nor cold, and how far it got is no margin.</summary>
    [Fact]
    public void A_gap_that_was_not_solved_has_an_outcome_of_its_own_and_no_margin()
    {
        var gap = new GapIgnition { Design = TestPlans.Lighting, Layout = TestPlans.Layout, HolePressureCoefficient = 0, Solver = new() { MaxSteps = 20 } };
        Odds odds = TestPlans.Through(gap).Odds(cases: 4);
        Assert.Equal(4, Assert.Single(odds.Run.Outcomes, o => o.Key == "sustainer not solved").Value);
        Assert.Equal((0, 0), (odds.EveryStageLights.Hits, odds.Margin.Count));
        Assert.Contains("not solved, and so neither lit nor cold: 4 cases", odds.ToString(), StringComparison.Ordinal);
        Assert.Contains("surface above ignition: no case", odds.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, odds.WhatMatters().Cases);
        using JsonDocument json = JsonDocument.Parse(odds.ToJson());
        Assert.Equal(4, json.RootElement.GetProperty("casesNotSolved").GetInt32());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("margin_K").ValueKind);
    }

    /// <summary>The margin of the lower gap is none of the stack where the gap above it was not solved.</summary>
    [Fact]
    public void A_stack_with_a_gap_that_was_not_solved_has_no_margin()
    {
        GapIgnition solved = new() { Design = TestPlans.Lighting with { Joint = Bench.Joint(2000) }, HolePressureCoefficient = 0 };
        StageIgnition Through(GapIgnition gap) => new StageIgnition.ByGap { Gap = gap };
        Odds odds = TestPlans.Of(TestFlights.Plan(
            TestFlights.Booster(), TestFlights.Booster("middle", Through(solved)), TestFlights.Sustainer(Through(solved with { Solver = new() { MaxSteps = 20 } })))).Odds(cases: 8);
        long reached = odds.Stages[0].Lights.Hits;
        Assert.InRange(reached, 1, 8);
        Assert.Equal(reached, odds.Run.Outcomes["sustainer not solved"]);
        Assert.Equal((8, 0, 8 - reached), (odds.Stages[0].Margin!.Count, odds.Stages[1].Margin!.Count, odds.Margin.Count));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(1_000_001)]
    public void Cases_outside_their_range_are_refused(int cases) => Assert.Throws<ArgumentOutOfRangeException>(nameof(cases), () => Demo.Odds(cases));

    [Fact]
    public void One_case_has_odds_of_all_or_nothing_and_tells_nothing_of_what_matters()
    {
        Odds odds = Demo.Odds(cases: 1);
        Assert.Equal(1, odds.EveryStageLights.Cases);
        Assert.All(odds.WhatMatters().Inputs, i => Assert.Equal((0, -1, 1), (i.Correlation, i.Interval.Low, i.Interval.High)));
    }

    [Fact]
    public void A_plan_without_judged_inputs_is_refused()
    {
        ModelFinding finding = Assert.Single(Assert.Throws<InvalidModelException>(() => TestPlans.Of(TestFlights.TwoStages()).Odds()).Findings);
        Assert.Equal(("STU001", "Flight.Stages"), (finding.Code, finding.Path));
        Assert.Contains("No stage is lit through a gap", finding.Message, StringComparison.Ordinal);
        Assert.Throws<InvalidModelException>(() => Demo.Odds(cases: 4, options: new StudyOptions { Part = new StudyPart(1, 2) }));
    }

    [Fact]
    public void Progress_is_told_and_a_token_stops_it()
    {
        var seen = new List<double>();
        Demo.Odds(cases: 3, progress: new Listener(p => seen.Add(p.Fraction)));
        Assert.Equal(1, seen[^1]);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => Demo.Odds(cases: 3, cancellationToken: stop.Token));
    }

    /// <summary>Without ties the correlation of ranks is 1 - 6 sum d^2/(n (n^2 - 1)) (C. Spearman, 1904).</summary>
    [Fact]
    public void The_rank_correlation_is_that_of_its_closed_form()
    {
        double[] x = [3, 1, 4, 1.5, 9, 2.6, 5], y = [2, 7, 1, 8, 2.8, 1.8, 0.4];
        double[] a = RankCorrelation.Ranks(x), b = RankCorrelation.Ranks(y);
        double squares = a.Zip(b, (p, q) => (p - q) * (p - q)).Sum();
        Assert.Equal(1 - 6 * squares / (7 * 48), RankCorrelation.Of(a, b), 1e-15);
        Assert.Equal(1, RankCorrelation.Of(a, RankCorrelation.Ranks([.. x.Select(Math.Exp)])));
        Assert.Equal([1.5, 3, 1.5], RankCorrelation.Ranks([2, 5, 2]));
        Assert.Equal(0, RankCorrelation.Of(a, RankCorrelation.Ranks(new double[7])));
        Interval at95 = RankCorrelation.At95(0, 103);
        Assert.Equal((-Math.Tanh(1.959963984540054 * Math.Sqrt(0.0106)), Math.Tanh(1.959963984540054 * Math.Sqrt(0.0106))), (at95.Low, at95.High));
    }

    private static readonly GapDesign Sure = Bench.Design with
    {
        Tube = Bench.Tube(40),
        Vents = [Bench.Hole(Bench.Tube(40), 8, 4)],
        Joint = Bench.Joint(60),
        Source = Bench.Design.Fed([0, 0.001, 0.4], [0, 4e-3, 4e-3], [2100, 2100, 2100]),
    };

    private static string Csv(Odds odds)
    {
        using var writer = new StringWriter();
        odds.Run.Columns().WriteCsv(writer);
        return writer.ToString();
    }
}
