using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>The record of a run: both sides of every jump, nothing twice, nothing beyond its ends.</summary>
public class DenseTrackTests
{
    private const double Speed = 2;
    private const double Period = 2 * Speed / BouncingBall.G;

    [Fact]
    public void Both_sides_of_every_jump_are_kept()
    {
        (DenseTrack track, List<double> jumps) = Bounces(5);
        Span<double> y = stackalloc double[2];
        foreach (double t in jumps)
        {
            track.JustBefore(t, y);
            Assert.Equal(-Speed, y[1], 1e-7);
            track.At(t, y);
            Assert.Equal(Speed, y[1], 1e-7);
        }
    }

    [Fact]
    public void Steps_follow_each_other_without_gap_or_overlap_and_none_is_empty()
    {
        (DenseTrack track, _) = Bounces(20);
        Assert.Equal(0, track.Start);
        for (int i = 0; i < track.Count; i++)
        {
            Assert.True(track.LengthOf(i) > 0);
            if (i > 0)
                Assert.Equal(track.StartOf(i), track.StartOf(i - 1) + track.LengthOf(i - 1), 1e-15);
        }
    }

    [Fact]
    public void Every_seam_within_a_phase_is_continuous()
    {
        (DenseTrack track, List<double> jumps) = Bounces(3);
        Span<double> before = stackalloc double[2], after = stackalloc double[2];
        for (int i = 1; i < track.Count; i++)
        {
            double t = track.StartOf(i);
            if (jumps.Contains(t))
                continue;
            track.JustBefore(t, before);
            track.At(t, after);
            Assert.Equal(after[0], before[0], 1e-13);
            Assert.Equal(after[1], before[1], 1e-13);
        }
    }

    [Fact]
    public void The_state_between_seams_is_the_parabola()
    {
        (DenseTrack track, _) = Bounces(2);
        Span<double> y = stackalloc double[2];
        for (double t = 0.01; t < Period; t += 0.013)
        {
            track.At(t, y);
            Assert.Equal(Speed * t - BouncingBall.G * t * t / 2, y[0], 1e-12);
        }
    }

    [Fact]
    public void At_the_start_there_is_nothing_before()
    {
        (DenseTrack track, _) = Bounces(1);
        Span<double> y = stackalloc double[2];
        track.JustBefore(0, y);
        Assert.Equal(Speed, y[1]);
    }

    [Theory]
    [InlineData(-1e-6)]
    [InlineData(10)]
    [InlineData(double.NaN)]
    public void Nothing_is_extrapolated(double t)
    {
        (DenseTrack track, _) = Bounces(1);
        double[] y = new double[2];
        Assert.Throws<ArgumentOutOfRangeException>(() => track.At(t, y));
        Assert.Throws<ArgumentOutOfRangeException>(() => track.JustBefore(t, y));
    }

    [Fact]
    public void The_end_is_recorded()
    {
        (DenseTrack track, List<double> jumps) = Bounces(2);
        Span<double> y = stackalloc double[2];
        track.At(jumps[^1], y);
        track.At(track.End, y);
        Assert.Equal(jumps[^1] + 0.1, track.End, 1e-15);
    }

    [Fact]
    public void An_empty_record_says_so()
    {
        var track = new DenseTrack(2, 4);
        Assert.Throws<InvalidOperationException>(() => track.Start);
        Assert.Throws<InvalidOperationException>(() => track.End);
        Assert.Throws<InvalidOperationException>(() => track.At(0, new double[2]));
    }

    [Fact]
    public void A_record_grows_and_keeps_what_it_has()
    {
        var system = default(CosineGrowth);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { FixedStep = 5.0 / 1000 };
        integrator.State[0] = 1;
        var track = new DenseTrack(1, Tsitouras54.DenseDegree);
        integrator.Go(ref system, 5, track);
        Assert.Equal(1000, track.Count);
        Span<double> y = stackalloc double[1];
        for (double t = 0; t <= 5; t += 0.0371)
        {
            track.At(t, y);
            Assert.Equal(CosineGrowth.Exact(t)[0], y[0], 1e-12);
        }
    }

    private static (DenseTrack Track, List<double> Jumps) Bounces(int count)
    {
        var ball = new BouncingBall(Crossing.Falling);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        integrator.State[1] = Speed;
        var track = new DenseTrack(2, Tsitouras54.DenseDegree);
        var jumps = new List<double>();
        for (int i = 0; i < count; i++)
        {
            Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 100, track));
            jumps.Add(integrator.Time);
            integrator.State[0] = 0;
            integrator.State[1] = Speed;
        }

        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref ball, integrator.Time + 0.1, track));
        return (track, jumps);
    }
}
