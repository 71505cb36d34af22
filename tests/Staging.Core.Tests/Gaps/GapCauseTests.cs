using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>What a run says of its cause and its cure is true of that run: the cure is tried.</summary>
public class GapCauseTests
{
    private static readonly GapProblem Holding = Bench.Gap.With(d => d with { Vents = [Bench.Hole(d.Tube, 5, 4)], Joint = Bench.Joint(60) });

    [Theory]
    [InlineData(-900)]
    [InlineData(0)]
    [InlineData(300)]
    public void A_joint_that_holds_what_the_cure_asks_for_does_not_move(double closing)
    {
        GapProblem weak = Bench.Gap with { Bodies = Bench.Gap.Bodies with { ClosingAcceleration = Acceleration.FromMetersPerSecondSquared(closing) } };
        GapOutcome apart = Assert.IsType<GapOutcome.PushedApart>(weak.With(d => d with { Joint = Bench.Joint(5) }).Solve().Outcome);
        double asked = Asked(apart.Remedy);
        // The joint that slid also made room; the one that holds sees a little more pressure, so the asked force is raised to that of a run that holds.
        GapRun held = weak.With(d => d with { Joint = Bench.Joint(500) }).Solve();
        double need = held.PeakGaugePressure.Pascals * Math.PI / 4 * 0.018 * 0.018 - 0.024 * closing;
        Assert.InRange(asked, 0.5 * need, need);
        Assert.Null(weak.With(d => d with { Joint = Bench.Joint(1.001 * need) }).Solve().TimeOf(GapEventKind.JointMoves));
        Assert.NotNull(weak.With(d => d with { Joint = Bench.Joint(0.999 * need) }).Solve().TimeOf(GapEventKind.JointMoves));
    }

    [Fact]
    public void More_area_is_advised_where_more_area_heats_and_less_where_less_does()
    {
        GapProblem firm = Bench.Gap.With(d => d with { Tube = Bench.Tube(120), Joint = Bench.Joint(400) });
        GapRun Drilled(double diameter) => firm.With(d => d with { Vents = [Bench.Hole(d.Tube, diameter, 4)] }).Solve();
        GapRun narrow = Drilled(1), wide = Drilled(13);
        Assert.Contains("more vent area", Assert.IsType<GapOutcome.TooCool>(narrow.Outcome).Remedy, StringComparison.Ordinal);
        Assert.True(Drilled(1.3).PeakGrainSurface > narrow.PeakGrainSurface);
        Assert.True(Drilled(12).PeakGrainSurface > wide.PeakGrainSurface);
    }

    [Fact]
    public void A_closed_gap_is_not_said_to_vent()
    {
        GapOutcome outcome = Bench.Gap.With(d => d with { Vents = [], Joint = Bench.Joint(2000), Source = d.Motor() with { Web = d.Web() with { Mass = Mass.FromGrams(2) } } }).Solve().Outcome;
        Assert.DoesNotContain("last vent", outcome.Cause, StringComparison.Ordinal);
        Assert.StartsWith("Vent the gap", outcome.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Products_that_leave_below_the_last_vent_are_vented_away()
    {
        var tube = Bench.Tube(250);
        Vent below = Bench.Hole(tube, 12, 4) with { Station = Length.FromMillimeters(60) };
        var away = Assert.IsType<GapOutcome.VentedAway>(Holding.With(d => d with { Vents = [below, .. d.Vents] }).Solve().Outcome);
        Assert.Contains("below the last", away.Cause, StringComparison.Ordinal);
        Assert.True(Holding.Solve().Outcome.IsLit, "closing them is the cure");
    }

    [Fact]
    public void A_source_that_is_too_small_is_not_cured_by_area()
    {
        GapProblem weak = Holding.With(d => d with { Source = d.Motor() with { Web = d.Web() with { Mass = Mass.Zero } } });
        GapRun few = weak.With(d => d with { Vents = [Bench.Hole(d.Tube, 12, 4)] }).Solve();
        var reach = Assert.IsType<GapOutcome.DidNotReach>(few.Outcome);
        Assert.StartsWith("More burn-through gas", reach.Remedy, StringComparison.Ordinal);
        Assert.IsType<GapOutcome.DidNotReach>(weak.With(d => d with { Vents = [Bench.Hole(d.Tube, 13, 4)] }).Solve().Outcome);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(8)]
    public void Nearly_touching_motors_have_products_at_the_nozzle(double length)
    {
        GapRun run = Bench.Gap.With(d => d with { Tube = Bench.Tube(length), Vents = [Bench.Hole(Bench.Tube(length), 1, 4)], Joint = Bench.Joint(100) }).Solve();
        Assert.IsNotType<GapOutcome.DidNotReach>(run.Outcome);
    }

    [Fact]
    public void A_run_cut_off_by_its_horizon_says_so()
    {
        GapProblem slow = Holding.With(d => d with { Source = d.Motor() with { Web = d.Web() with { Time = Duration.FromSeconds(1) } } });
        Assert.Contains("watched for", (slow with { Horizon = Duration.FromMilliseconds(50) }).Solve().Outcome.Cause, StringComparison.Ordinal);
    }

    private static double Asked(string cure)
    {
        const string before = "needs more than ";
        int at = cure.IndexOf(before, StringComparison.Ordinal) + before.Length;
        return double.Parse(cure.AsSpan(at, cure.IndexOf(' ', at) - at), System.Globalization.CultureInfo.InvariantCulture);
    }
}
