using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Events;

/// <summary>(3) A root at the start of a phase is not an event: a function counts once it has left zero.</summary>
public class Rule3PhaseStartTests
{
    [Theory]
    [InlineData(1.0)]
    [InlineData(-1.0)]
    public void Zero_at_the_start_is_not_an_event(double slope) =>
        Assert.Empty(Watching.Events(0.25, 4, 1, (t => slope * t, Watching.Note)));

    [Fact]
    public void Zero_all_along_is_not_an_event() => Assert.Empty(Watching.Events(0.25, 4, 1, (_ => 0, Watching.Note)));

    [Fact]
    public void A_function_that_waits_at_zero_and_leaves_is_armed_then()
    {
        // Zero to 0.4, up to 0.6, back through zero at 0.8.
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (t => t < 0.4 ? 0 : 0.2 - Math.Abs(t - 0.6), Watching.Note)));
        Assert.InRange(fired.Time, 0.8, 0.8 + Watching.Tolerance);
    }

    [Fact]
    public void A_return_to_zero_within_the_first_part_is_found()
    {
        // Leaves zero upwards at the start and is back at 0.05, inside the first part of 0.0625.
        FiredEvent fired = Assert.Single(Watching.Events(0.25, 4, 1, (t => t * (0.05 - t), Watching.Note)));
        Assert.InRange(fired.Time, 0.05, 0.05 + Watching.Tolerance);
    }

    [Fact]
    public void A_phase_that_goes_on_after_its_event_does_not_see_the_root_again()
    {
        var system = new TimeFunctions((t => t - 0.3, Watching.End));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.25);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, 1));
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 1));
        Assert.Empty(integrator.Fired.ToArray());
    }

    [Fact]
    public void A_state_put_back_onto_its_root_starts_afresh()
    {
        var ball = new BouncingBall(Crossing.Either);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        integrator.State[1] = 3;
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 10));
        Assert.Equal(6 / BouncingBall.G, integrator.Time, 9);
        integrator.State[0] = 0;
        integrator.State[1] = 2;
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 10));
        Assert.Equal(10 / BouncingBall.G, integrator.Time, 8);
    }
}
