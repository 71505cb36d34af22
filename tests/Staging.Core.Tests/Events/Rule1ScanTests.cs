using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(1) Every step is cut into parts and scanned for sign changes; two within one part may be missed.</summary>
public class Rule1ScanTests
{
    private static double Cubic(double t) => (t - 0.2) * (t - 0.5) * (t - 0.8);

    private static double Dip(double t) => (t - 0.51) * (t - 0.59);

    [Fact]
    public void Three_roots_within_one_step_all_fire()
    {
        double[] times = [.. Watching.Events(1, 4, 1, (Cubic, Watching.Note)).Select(e => e.Time)];
        Assert.Equal([0.2, 0.5, 0.8], times, (a, b) => Math.Abs(a - b) <= Watching.Tolerance);
    }

    [Fact]
    public void Two_roots_within_one_part_are_missed_and_more_parts_find_them()
    {
        Assert.Empty(Watching.Events(1, 4, 1, (Dip, Watching.Note)));
        Assert.Equal(2, Watching.Events(1, 20, 1, (Dip, Watching.Note)).Length);
    }

    [Fact]
    public void Shorter_steps_find_what_longer_steps_miss() =>
        Assert.Equal(2, Watching.Events(0.1, 2, 1, (Dip, Watching.Note)).Length);
}
