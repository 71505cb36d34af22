using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>What a builder changes of a gap in one line.</summary>
public class GapProblemTests
{
    private static readonly GapProblem Start = StartingGaps.Bore18mm;

    [Fact]
    public void Nothing_named_is_nothing_changed() => Assert.Equal(Start, Start.With());

    [Fact]
    public void Length_and_retention_change_in_one_line()
    {
        GapProblem gap = StartingGaps.Bore18mm.With(length: Length.FromMillimeters(250), breakaway: Force.FromNewtons(40));
        Assert.Equal(250, gap.Design.Tube.Length.Millimeters);
        Assert.Equal(18, gap.Design.Tube.Bore.Millimeters);

        // 16 N of 20 N slide in the starting gap: 80 %.
        Assert.Equal(40, gap.Design.Joint.Coupler.BreakawayForce.Newtons);
        Assert.Equal(32, gap.Design.Joint.Coupler.SlidingForce.Newtons, 1e-12);
        Assert.Equal(Start.Design.Grain, gap.Design.Grain);
        Assert.Equal(Start.Bodies, gap.Bodies);
    }

    [Fact]
    public void Everything_named_is_taken()
    {
        Vent vent = Bench.Hole(Bench.Tube(120), 5);
        StageJoint joint = Bench.Joint(12);
        GapSource.EndBurner wider = StartingGaps.Booster with { NozzleThroatDiameter = Length.FromMillimeters(3.2) };
        GapProblem gap = Start.With(bore: Length.FromMillimeters(20), breakaway: Force.FromNewtons(30), sliding: Force.FromNewtons(5), vents: [vent], joint: joint, source: wider);
        Assert.Equal(20, gap.Design.Tube.Bore.Millimeters);
        Assert.Equal([vent], gap.Design.Vents);
        Assert.Equal(wider, gap.Design.Source);
        Assert.Equal(joint with { Coupler = joint.Coupler with { BreakawayForce = Force.FromNewtons(30), SlidingForce = Force.FromNewtons(5) } }, gap.Design.Joint);
        Assert.Equal(joint, Start.With(joint: joint).Design.Joint);
    }

    [Fact]
    public void A_joint_that_was_held_by_nothing_slides_at_its_breakaway_force()
    {
        GapProblem loose = Start.With(joint: Bench.Joint(0)), held = loose.With(breakaway: Force.FromNewtons(7));
        Assert.Equal(7, held.Design.Joint.Coupler.SlidingForce.Newtons);
    }

    [Fact]
    public void A_value_outside_its_range_is_refused_by_name()
    {
        Assert.Equal("Length", Assert.Throws<ArgumentOutOfRangeException>(() => Start.With(length: Length.FromMeters(9))).ParamName);
        Assert.Equal("BreakawayForce", Assert.Throws<ArgumentOutOfRangeException>(() => Start.With(breakaway: Force.FromNewtons(-1))).ParamName);
    }
}
