using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(5) Events within the time tolerance of an ending event all fire, in the order of their indices.</summary>
public class Rule5SimultaneousTests
{
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.25)] // Exactly at a step end.
    [InlineData(0.3125)] // Exactly at a part edge.
    [InlineData(1.0)] // Exactly at the stop time.
    public void Equal_roots_all_fire_at_one_time_in_index_order(double root)
    {
        FiredEvent[] fired = Watching.Events(
            0.25,
            4,
            1,
            (t => root - t, Watching.Note),
            (t => 1e6 * (t - root), Watching.End),
            (t => Math.Exp(t) - Math.Exp(root), Watching.End),
            (t => Math.Pow(t - root, 3), Watching.Note));
        Assert.Equal([0, 1, 2, 3], fired.Select(e => e.Index));
        Assert.All(fired, e => Assert.Equal(fired[0].Time, e.Time));
        Assert.InRange(fired[0].Time, root - Watching.Tolerance, root + 2 * Watching.Tolerance);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(0.3125 - 2e-10)] // The two lie on either side of a part edge.
    [InlineData(0.25 - 2e-10)] // The two lie on either side of a step end: the later one opens the next phase.
    public void Roots_closer_than_the_tolerance_are_never_lost(double root)
    {
        var system = new TimeFunctions((t => t - root - 4e-10, Watching.Note), (t => t - root, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 1));
        List<int> seen = [.. integrator.Fired.ToArray().Select(e => e.Index)];
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 1));
        seen.AddRange(integrator.Fired.ToArray().Select(e => e.Index));
        Assert.Equal([0, 1], seen.Order());
    }

    [Fact]
    public void Roots_closer_than_the_tolerance_across_a_part_edge_fire_together()
    {
        const double Root = 0.3125 - 2e-10;
        FiredEvent[] fired = Watching.Events(0.25, 4, 1, (t => t - Root - 4e-10, Watching.Note), (t => t - Root, Watching.End));
        Assert.Equal([0, 1], fired.Select(e => e.Index));
    }

    [Fact]
    public void Events_that_do_not_end_the_phase_keep_their_own_times_in_time_order()
    {
        FiredEvent[] fired = Watching.Events(0.25, 4, 1, (t => t - 0.305, Watching.Note), (t => t - 0.301, Watching.Note), (t => 0.303 - t, Watching.Note));
        Assert.Equal([1, 2, 0], fired.Select(e => e.Index));
    }
}
