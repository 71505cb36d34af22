using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(6) An event that ends the phase hides every later root.</summary>
public class Rule6EndingTests
{
    [Fact]
    public void Later_roots_of_the_same_part_do_not_fire_and_earlier_ones_do()
    {
        FiredEvent[] fired = Watching.Events(
            1, 1, 1, (t => t - 0.6, Watching.Note), (t => t - 0.5, Watching.End), (t => t - 0.4, Watching.Note), (t => t - 0.7, Watching.End));
        Assert.Equal([2, 1], fired.Select(e => e.Index));
    }

    [Fact]
    public void The_hidden_root_fires_in_the_next_phase_if_it_is_still_there()
    {
        var system = new TimeFunctions((t => t - 0.5, Watching.End), (t => t - 0.6, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(1);
        integrator.Go(ref system, 1);
        Assert.Equal(0.5, integrator.Time, 8);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 1));
        Assert.Equal(0.6, integrator.Time, 8);
        Assert.Equal([1], integrator.Fired.ToArray().Select(e => e.Index));
    }

    [Theory]
    [InlineData((int)Crossing.Rising, new[] { 0.3 })]
    [InlineData((int)Crossing.Falling, new[] { 0.7 })]
    [InlineData((int)Crossing.Either, new[] { 0.3, 0.7 })]
    public void Only_the_watched_direction_counts(int crossing, double[] expected)
    {
        FiredEvent[] fired = Watching.Events(0.25, 4, 1, (t => (t - 0.3) * (0.7 - t), new EventRule((Crossing)crossing, EndsPhase: false)));
        Assert.Equal(expected, fired.Select(e => Math.Round(e.Time, 8)));
    }

    [Theory]
    [InlineData((int)Crossing.Rising, new[] { 0.25 })]
    [InlineData((int)Crossing.Falling, new[] { 0.5 })]
    public void Only_the_watched_direction_counts_at_exact_zeros(int crossing, double[] expected)
    {
        FiredEvent[] fired = Watching.Events(0.25, 4, 1, (t => (t - 0.25) * (0.5 - t), new EventRule((Crossing)crossing, EndsPhase: false)));
        Assert.Equal(expected, fired.Select(e => e.Time));
    }
}
