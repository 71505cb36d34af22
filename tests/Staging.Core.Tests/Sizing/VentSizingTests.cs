using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Tests.Gaps;
using Staging.Core.Tests.Reviews;
using UnitsNet;

namespace Staging.Core.Tests.Sizing;

public class VentSizingTests
{
    private static readonly GapProblem Gap = Bench.Gap.With(d => d with { Joint = Bench.Joint(30) });
    private static readonly VentAdvice Advice = Gap.SizeVents(TestPlans.Layout);

    [Fact]
    public void The_recommended_area_lights() =>
        Assert.IsType<GapOutcome.Lit>(Gap.WithVents(TestPlans.Layout, Advice.Recommended!.Value).Solve().Outcome);

    [Fact]
    public void Just_below_the_window_it_stays_dark()
    {
        Area below = 0.98 * Advice.Widest!.Min;
        Assert.False(Gap.WithVents(TestPlans.Layout, below).Solve().Outcome.IsLit);
    }

    /// <summary>What the jet of motors all but in contact lights after they have parted hangs on its aim: no vent is sized by it, however long the gap is followed.</summary>
    [Fact]
    public void Light_after_parting_sizes_no_vent()
    {
        GapProblem shortGap = StartingGaps.Bore18mm.With(d => d with
        {
            Tube = Bench.Tube(8),
            Joint = d.Joint.Coupler with { Engagement = Length.FromMillimeters(0.5) },
        });
        VentLayout layout = TestPlans.Layout with { Land = Length.FromMillimeters(0.5) };
        VentAdvice alone = shortGap.SizeVents(layout), followed = (shortGap with { AfterOpening = Duration.FromMilliseconds(10) }).SizeVents(layout);
        Assert.Equal(alone.Widest!.Min.SquareMillimeters, followed.Widest!.Min.SquareMillimeters, 0.02 * alone.Widest.Min.SquareMillimeters);
        Assert.All(followed.Trials.Where(t => t.TotalArea < 0.9 * followed.Widest.Min), t => Assert.False(t.Outcome.IsLitBeforeParting));
    }

    [Fact]
    public void Drills_stand_on_either_side_of_the_exact_hole()
    {
        Assert.True(Advice.Holes!.Below!.Drill.Diameter <= Advice.Holes.Exact.Diameter);
        Assert.True(Advice.Holes.Above!.Drill.Diameter >= Advice.Holes.Exact.Diameter);
        Assert.Equal(Advice.Recommended!.Value.SquareMillimeters, Advice.Holes.Exact.TotalArea.SquareMillimeters, 1e-6);
    }

    [Fact]
    public void A_hopeless_gap_is_said_to_be_hopeless()
    {
        VentAdvice advice = Gap.With(d => d with { Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(1200) } }).SizeVents(TestPlans.Layout);
        Assert.Empty(advice.Windows);
        Assert.Null(advice.Recommended);
        Assert.Null(advice.Holes);
        Assert.Contains("No vent area lights", advice.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stronger_joint_never_narrows_the_window()
    {
        VentAdvice stronger = Gap.With(d => d with { Joint = Bench.Joint(60) }).SizeVents(TestPlans.Layout);
        Assert.True(stronger.Widest!.Min.SquareMillimeters <= Advice.Widest!.Min.SquareMillimeters * 1.02);
        Assert.True(stronger.Widest.Max.SquareMillimeters >= Advice.Widest.Max.SquareMillimeters / 1.02);
    }
}
