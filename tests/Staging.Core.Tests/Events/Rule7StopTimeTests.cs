using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(7) Known times are stop times: met exactly, never located; an arrival at exact zero there fires there.</summary>
public class Rule7StopTimeTests
{
    [Fact]
    public void Stop_times_are_met_to_the_last_bit()
    {
        var system = default(CosineGrowth);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        for (int i = 1; i <= 50; i++)
        {
            double stop = i * 0.1 + 0.01 * Math.Sqrt(i);
            Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, stop));
            Assert.Equal(stop, integrator.Time);
        }
    }

    [Fact]
    public void A_stop_at_the_time_reached_does_nothing()
    {
        var system = new TimeFunctions((t => t, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.1);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 0));
        Assert.Empty(system.Times);
    }

    [Theory]
    [InlineData(-1e-300)]
    [InlineData(double.NaN)]
    public void A_stop_before_the_time_reached_is_refused(double stop)
    {
        var system = new TimeFunctions();
        Integrator<Tsitouras54> integrator = Watching.Steps(0.1);
        Assert.Throws<ArgumentOutOfRangeException>(() => integrator.Go(ref system, stop));
    }

    [Fact]
    public void Arriving_at_exact_zero_at_a_stop_fires_there_and_not_again_after_it()
    {
        var system = new TimeFunctions((t => t - 0.5, Watching.Note));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.1);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 0.5));
        Assert.Equal([new FiredEvent(0, 0.5)], integrator.Fired.ToArray());
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 1));
        Assert.Equal(0, integrator.Fired.Length);
    }

    [Fact]
    public void An_ending_event_at_the_stop_time_ends_the_phase_as_an_event()
    {
        var system = new TimeFunctions((t => t - 0.5, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.1);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 0.5));
        Assert.Equal(0.5, integrator.Time);
    }

    [Fact]
    public void A_pulse_between_stop_times_is_not_stepped_over()
    {
        // 1 ms of slope 1000 in 10 s of nothing, at tolerances where a step of a second would never see it.
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        foreach ((double stop, double slope) in new[] { (6.0, 0.0), (6.001, 1000.0), (10.0, 0.0) })
        {
            var system = new ConstantSlope(slope);
            integrator.Go(ref system, stop);
        }

        Assert.Equal(1, integrator.State[0], 1e-11); // The width of the pulse is known to a rounding of 6 s.
    }
}
