using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

/// <summary>One call says what to build, and what it says lights in the model.</summary>
public class RecommendationTests
{
    private static readonly GapProblem Gap = Bench.Gap.With(d => d with { Tube = Bench.Tube(120), Vents = [], Joint = Bench.Joint(30) });
    private static readonly VentAdvice Built = Gap.Recommend(TestPlans.Layout);

    [Fact]
    public void What_is_recommended_lights_with_the_drills_named()
    {
        Assert.IsType<GapOutcome.Lit>(Built.Run!.Outcome);
        WallHoles tube = Assert.Single(Built.Walls);
        Assert.Equal("guide tube", tube.Wall);
        Assert.Equal(tube.Drilled!.Holes.Diameter.Millimeters, Built.Run.Problem.Design.Vents[0].Holes.Diameter.Millimeters, 1e-9);
        Assert.Equal(TestPlans.Layout.Land + 0.5 * tube.Drilled.Holes.Diameter, Built.Run.Problem.Design.Tube.Length - Built.Run.Problem.Design.Vents[0].Station);
    }

    /// <summary>A guide tube far narrower than the joint: no engagement is tried that would hold more than a hundred times the gap.</summary>
    [Theory]
    [InlineData(6, 25)]
    [InlineData(5, 40)]
    [InlineData(18, 3)]
    public void Narrow_and_short_tubes_are_answered_too(double bore, double length)
    {
        var tube = new GuideTube { Bore = Length.FromMillimeters(bore), Length = Length.FromMillimeters(length) };
        VentAdvice asked = Gap.With(d => d with { Tube = tube, Source = d.Motor() with { OpeningDiameter = Length.FromMillimeters(Math.Min(bore, 10)) } })
            .Recommend(TestPlans.Layout with { HoleCount = 2, Land = Length.FromMillimeters(0.5) });
        Assert.NotEmpty(asked.ToString());
        Assert.True(asked.Engagement is not { } engagement || engagement.Millimeters is >= 0.5 and <= 500);
    }

    [Fact]
    public void The_engagement_leaves_the_margin_and_a_step_less_does_not()
    {
        // A joint of 5 N moves early, so that the engagement decides.
        VentAdvice weak = Gap.With(d => d with { Joint = Bench.Joint(5) }).Recommend(TestPlans.Layout);
        GapRun run = weak.Run!;
        Assert.NotNull(run.TimeOf(GapEventKind.JointMoves));
        double until = 1.5 * run.Outcome.Time.Seconds;
        Assert.True((run.TimeOf(GapEventKind.JointOpens)?.Seconds ?? double.PositiveInfinity) >= until * (1 - 1e-9));
        GapRun shorter = run.Problem.With(d => d with { Joint = d.Joint.Coupler with { Engagement = weak.Engagement!.Value - Length.FromMillimeters(0.5) } }).Solve();
        Assert.True(!shorter.Outcome.IsLit || shorter.TimeOf(GapEventKind.JointOpens)!.Value < 1.5 * shorter.Outcome.Time);
        Assert.Contains("should engage", weak.ToString().ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Nested_tubes_get_holes_in_both_walls_and_more_of_them_than_one_wall()
    {
        GapProblem nested = Gap.With(d => d with
        {
            Jackets = [Jacket.Between("outer tube", Length.FromMillimeters(19), Length.FromMillimeters(24), Length.FromMillimeters(100), Opening(4, 6))],
        });
        VentAdvice both = nested.Recommend(TestPlans.Layout);
        Assert.Equal(["guide tube", "outer tube"], both.Walls.Select(w => w.Wall));
        Assert.All(both.Walls, w => Assert.Equal(both.Recommended!.Value.SquareMillimeters, w.Pattern.Exact.TotalArea.SquareMillimeters, 1e-6));
        Assert.IsType<GapOutcome.Lit>(both.Run!.Outcome);
        Assert.True(both.Widest!.Min > Built.Widest!.Min);
    }

    [Fact]
    public void A_gap_that_never_lights_gets_its_reason_and_nothing_to_drill()
    {
        VentAdvice none = Gap.With(d => d with { Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(1200) } }).Recommend(TestPlans.Layout);
        Assert.Empty(none.Walls);
        Assert.Null(none.Run);
        Assert.Contains("No vent area lights", none.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_side_wide_open_is_the_upper_edge_of_a_long_gap_and_the_ring_bounds_what_is_asked()
    {
        GapProblem held = Gap.With(d => d with { Tube = Bench.Tube(200), Joint = Bench.Joint(60), Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(0.3) } } });
        VentAdvice advice = held.SizeVents(TestPlans.Layout);
        Area ring = TestPlans.Layout.LargestRing(held.Design.Tube);
        Assert.False(advice.Widest!.ReachesScanEnd);
        Assert.True(advice.Widest.Max > ring && advice.Recommended < ring);
        GapOutcome beyond = advice.Trials.First(t => t.TotalArea > advice.Widest.Max).Outcome;
        Assert.Contains("guide tube across", beyond.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_area_beyond_one_ring_is_laid_along_the_tube_without_a_gap_in_area_or_place()
    {
        GuideTube tube = Bench.Tube(200);
        Area ring = TestPlans.Layout.LargestRing(tube);
        Vent one = TestPlans.Layout.VentOf(tube, ring), more = TestPlans.Layout.VentOf(tube, 3 * ring);
        Assert.Null(one.AxialLength);
        Assert.Equal(3 * ring.SquareMillimeters, more.Holes.TotalArea.SquareMillimeters, 1e-6);
        Assert.Equal(199, (more.Station + 0.5 * more.AxialLength!.Value).Millimeters, 1e-9);
        Assert.InRange(TestPlans.Layout.LargestOpening(tube).SquareMillimeters / (0.8 * Math.PI * 18 * 0.9 * 199) - 1, -1e-9, 1e-9);
    }

    [Fact]
    public void The_short_form_is_the_layout_of_common_practice()
    {
        Assert.Equal(TestPlans.Layout, new VentLayout { HoleCount = 4 });
        VentAdvice sized = Gap.SizeVents(holes: 4), recommended = Gap.Recommend(holes: 4);
        Assert.Equal(Gap.SizeVents(TestPlans.Layout).ToString(), sized.ToString());
        Assert.Equal(Built.ToString(), recommended.ToString());
        Assert.Null(sized.Engagement);
        Assert.NotNull(recommended.Engagement);
    }

    [Fact]
    public void The_whole_answer_is_a_few_lines()
    {
        string[] lines = Built.ToString().Split('\n');
        Assert.InRange(lines.Length, 4, 12);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 100));
        Assert.Contains(lines, line => line.StartsWith($"guide tube: 4 holes, drill {Built.Walls[0].Drilled!.Drill.Label}", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("With these holes: ", StringComparison.Ordinal));
    }

    private static readonly int[] ManyHoles = [30, 40, 50, 60, 80];

    /// <summary>More holes than one ring holds: the middle of the opening is not where holes are drilled.</summary>
    [Fact]
    public void Holes_over_a_length_are_not_told_as_one_ring()
    {
        VentAdvice advice = ManyHoles
            .Select(n => Gap.SizeVents(TestPlans.Layout with { HoleCount = n, WallThickness = Length.FromMillimeters(0.1), Drills = DrillSeries.MetricTenths }))
            .First(a => a.Run?.Problem.Design.Vents[0].Spread > 0);
        Vent vent = advice.Run!.Problem.Design.Vents[0];
        string text = advice.ToString().ReplaceLineEndings(" "), below = FormattableString.Invariant($"{120 - vent.Station.Millimeters:F1} mm below the nozzle plane");
        Assert.Contains(FormattableString.Invariant($"Holes of the tube in rings over {1e3 * vent.Spread:F1} mm, their middle {below}: not one ring to drill."), text, StringComparison.Ordinal);
        Assert.DoesNotContain("Hole centres", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_search_for_the_joint_can_be_stopped()
    {
        var counted = new Counted();
        EngagementSearch.Longest(Gap.With(d => d with { DischargeLaw = counted })).SizeVents(TestPlans.Layout);
        using var source = new CancellationTokenSource();
        var stopping = new Counted { At = counted.Calls + 2000, Then = source.Cancel };
        Assert.Throws<OperationCanceledException>(() => Gap.With(d => d with { DischargeLaw = stopping }).Recommend(TestPlans.Layout, cancellationToken: source.Token));
    }

    /// <summary>A law that does something at a call.</summary>
    private sealed class Counted : IDischargeLaw
    {
        public long Calls { get; private set; }

        public long At { get; init; } = long.MaxValue;

        public Action Then { get; init; } = () => { };

        public ValidityRange Validity => SharpEdgedLaw.Perry.Validity;

        public double MassFlux_kg_per_m2s(in OrificeConditions conditions)
        {
            if (++Calls == At)
                Then();
            return SharpEdgedLaw.Perry.MassFlux_kg_per_m2s(conditions);
        }
    }

    private static JacketOpening Opening(int count, double millimetres) => new()
    {
        Holes = new VentHoles { Diameter = Length.FromMillimeters(millimetres), WallThickness = Length.FromMillimeters(0.5), Count = count },
        To = VentTarget.Air,
    };
}
