using Staging.Core.Gaps;
using UnitsNet;

namespace Staging.Core.Tests.Gaps;

/// <summary>The gap followed beyond the opening of its joint.</summary>
public class AfterOpeningTests
{
    private static readonly GapProblem Weak = Bench.Gap.With(d => d with { Joint = Bench.Joint(8, 12) });

    private static readonly GapRun Ended = Weak.Solve(), Followed = (Weak with { AfterOpening = Duration.FromMilliseconds(30) }).Solve();

    [Fact]
    public void Up_to_the_opening_nothing_changes()
    {
        Assert.IsType<GapOutcome.PushedApart>(Ended.Outcome);
        Assert.Equal(Ended.Outcome.Said(), Followed.Outcome.Said());
        Assert.Equal(Ended.Events.Times(), Followed.Events.Where(e => e.Time <= Ended.End).Times());
        Assert.Equal(Ended.PeakGrainSurface, Followed.PeakGrainSurface);
        Assert.Null(Ended.PeakGrainSurfaceAfterOpening);
        Assert.NotNull(Followed.PeakGrainSurfaceAfterOpening);
    }

    [Fact]
    public void The_gap_bleeds_down_and_the_bodies_go_on_parting()
    {
        Duration opened = Ended.End;
        // Spent when the last fragment has burnt: chamber and gap have then long been at the pressure outside.
        Assert.Equal(25, Followed.End.Milliseconds, 0.5);
        Assert.Equal([GapEventKind.SourceEnded, GapEventKind.Spent], Followed.Events.Where(e => e.Time > opened).Select(e => e.Kind));
        GapSnapshot at = Followed.At(opened), after = Followed.At(Followed.End);
        Assert.True(at.GapPressure.Pascals > 1.2 * 101325);
        // Afterburn through a wide annulus: within a few percent of the outside.
        Assert.InRange(after.GapPressure.Pascals, 101325 * 0.99, 101325 * 1.05);
        double engagement = 0.012;
        Assert.Equal(engagement, at.JointTravel.Meters, 1e-6);
        Assert.True(after.JointTravel.Meters > 5 * engagement);
    }

    [Fact]
    public void Mass_and_energy_are_kept_through_the_opening()
    {
        // The stiff method conserves what is linear in the state to its round-off.
        Assert.InRange(Followed.Ledger.RelativeMassResidual, -1e-12, 1e-12);
        Assert.InRange(Followed.Ledger.RelativeEnergyResidual, -1e-12, 1e-12);
    }

    [Fact]
    public void A_tighter_tolerance_says_the_same()
    {
        GapRun tight = (Weak with { AfterOpening = Duration.FromMilliseconds(30) }).Solve(options: new Staging.Core.Solving.SolverOptions { RelativeTolerance = 1e-10 });
        Duration t = Followed.End;
        Assert.Equal(tight.At(t).GapPressure.Pascals, Followed.At(t).GapPressure.Pascals, 1e-5 * 101325);
        Assert.Equal(tight.PeakGrainSurfaceAfterOpening!.Value.Kelvins, Followed.PeakGrainSurfaceAfterOpening!.Value.Kelvins, 1e-2);
    }

    [Fact]
    public void What_lights_only_after_parting_is_not_lit()
    {
        // A grain that catches fire at 450 K, and a joint that opens just before it gets there.
        GapProblem early = Weak.With(d => d with { Joint = Bench.Joint(29, 3), Grain = d.Grain with { IgnitionTemperature = Temperature.FromKelvins(450) } });
        Duration? lit = early.With(d => d with { Joint = Bench.Joint(2000) }).Solve().TimeOf(GapEventKind.Lit);
        Assert.NotNull(lit);
        GapRun run = (early with { AfterOpening = Duration.FromMilliseconds(100) }).Solve();
        Assert.False(run.Outcome.IsLit);
        Assert.Null(run.TimeOf(GapEventKind.Lit));
        Assert.InRange(run.PeakGrainSurfaceAfterOpening!.Value.Kelvins, 450, 600);
    }
}
