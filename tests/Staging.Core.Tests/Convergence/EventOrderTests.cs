using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>Located times, and solutions behind a jump of state and right-hand side, converge as fast as the smooth solution.</summary>
public class EventOrderTests
{
    [Fact]
    public void The_event_time_converges_with_the_order_of_the_dense_output()
    {
        double order = ObservedOrder.Fit(32, 2, steps => Across(steps).TimeError);
        Assert.InRange(order, 4.5, 5.5);
    }

    [Fact]
    public void The_solution_converges_with_full_order_across_a_jump_and_a_switch()
    {
        double order = ObservedOrder.Fit(64, 2, steps => Across(steps).EndError);
        Assert.InRange(order, 4.8, 5.7);
    }

    [Fact]
    public void The_event_time_follows_the_tolerance_in_adaptive_runs()
    {
        foreach (double tolerance in new[] { 1e-5, 1e-7, 1e-9, 1e-11 })
        {
            SolverOptions options = ObservedOrder.Sharp with { RelativeTolerance = tolerance, ScaledAbsoluteTolerance = tolerance };
            var integrator = new Integrator<Tsitouras54>(options, [1.0]);
            integrator.State[0] = 1;
            var system = default(JumpAndSwitch);
            Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, JumpAndSwitch.Stop));
            Assert.Equal(JumpAndSwitch.EventTime, integrator.Time, 3 * tolerance + 2e-12);
        }
    }

    private static (double TimeError, double EndError) Across(int steps)
    {
        var integrator = new Integrator<Tsitouras54>(ObservedOrder.Sharp, [1.0]) { FixedStep = JumpAndSwitch.Stop / steps };
        integrator.State[0] = 1;
        var system = default(JumpAndSwitch);
        Assert.Equal(PhaseEnd.Event, integrator.Go(ref system, JumpAndSwitch.Stop));
        double timeError = Math.Abs(integrator.Time - JumpAndSwitch.EventTime);
        integrator.State[0] *= 2;
        system.Switched = true;
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, JumpAndSwitch.Stop));
        return (timeError, Math.Abs(integrator.State[0] - JumpAndSwitch.Exact(JumpAndSwitch.Stop)));
    }
}
