using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(4) One firing a root, wherever it falls; a touch of zero from one side is no root.</summary>
public class Rule4OneFiringTests
{
    [Theory]
    [InlineData(0.0625)] // A part edge within the first step.
    [InlineData(0.25)] // The end of the first step.
    [InlineData(0.5)]
    [InlineData(0.6875)]
    public void An_exact_zero_on_an_edge_fires_once_at_the_edge(double root)
    {
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (t => t - root, Watching.Note)));
        Assert.Equal(root, fired.Time);
    }

    [Theory]
    [InlineData(0.0625)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void An_exact_zero_on_an_edge_ends_a_phase_at_the_edge(double root)
    {
        var system = new TimeFunctions((t => root - t, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 1));
        Assert.Equal(root, integrator.Time);
        Assert.Equal(root, integrator.State[0], 15);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 1));
        Assert.Equal(0, integrator.Fired.Length);
        Assert.Equal(1, integrator.State[0], 15);
    }

    [Theory]
    [InlineData(0.0625)]
    [InlineData(0.25)]
    [InlineData(0.3)]
    [InlineData(0.5)]
    public void A_touch_is_not_an_event(double root) =>
        Assert.Empty(Watching.Events(0.25, 4, 1, (t => (t - root) * (t - root), Watching.Note)));

    [Fact]
    public void A_touch_does_not_hide_the_root_behind_it()
    {
        // Touches zero at 0.25, a step end, and crosses at 0.4.
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (t => (t - 0.25) * (t - 0.25) * (0.4 - t), Watching.Note)));
        Assert.InRange(fired.Time, 0.4, 0.4 + Watching.Tolerance);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(0.3)]
    public void Arriving_on_a_level_zero_fires_once(double arrival)
    {
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (t => Math.Max(arrival - t, 0), Watching.Note)));
        Assert.InRange(fired.Time, arrival - Watching.Tolerance, 0.3125);
    }

    [Fact]
    public void Roots_a_rounding_off_the_edges_fire_once_each()
    {
        // sin(8 pi t) changes sign at every eighth: part edges and step ends, where round-off leaves it just off zero on either side.
        FiredEvent[] fired = Watching.Events(0.25, 4, 0.9, (t => Math.Sin(8 * Math.PI * t), Watching.Note));
        Assert.Equal(7, fired.Length);
        for (int i = 0; i < fired.Length; i++)
            Assert.Equal((i + 1) / 8.0, fired[i].Time, 8);
    }

    [Fact]
    public void Exact_zeros_of_alternating_sign_on_every_edge_fire_once_each()
    {
        // A triangle wave through exact zeros at every eighth.
        static double Triangle(double t)
        {
            double phase = 8 * t - 2 * Math.Floor(4 * t);
            return phase <= 0.5 ? phase : phase <= 1.5 ? 1 - phase : phase - 2;
        }

        double[] times = [.. Watching.Events(0.25, 4, 1, (Triangle, Watching.Note)).Select(e => e.Time)];
        Assert.Equal([0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0], times);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_thousand_bounces_fire_once_each(bool putBackOntoTheFloor)
    {
        var ball = new BouncingBall(Crossing.Falling);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        const double Speed = 2;
        // Taken just past the floor, the speed gains at most g times the tolerance a bounce where the height is put back.
        integrator.State[1] = Speed;
        for (int bounce = 1; bounce <= 1000; bounce++)
        {
            Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 1e4));
            Assert.Equal(1, integrator.Fired.Length);
            Assert.Equal(bounce * 2 * Speed / BouncingBall.G, integrator.Time, Watching.Tolerance * bounce * (bounce + 1));
            integrator.State[1] = -integrator.State[1];
            if (putBackOntoTheFloor)
                integrator.State[0] = 0;
        }

        Assert.Equal(Speed, integrator.State[1], 1000 * BouncingBall.G * Watching.Tolerance);
    }

    [Fact]
    public void A_damped_ball_bounces_until_its_hops_are_shorter_than_the_tolerance()
    {
        var ball = new BouncingBall(Crossing.Falling);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        double speed = 1, time = 0;
        integrator.State[1] = speed;
        for (int bounce = 1; 2 * speed / BouncingBall.G > 4e-9; bounce++)
        {
            time += 2 * speed / BouncingBall.G;
            Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 10));
            Assert.Equal(time, integrator.Time, 2e-9 * bounce);
            speed *= 0.5;
            integrator.State[0] = 0;
            integrator.State[1] = speed;
        }
    }
}
