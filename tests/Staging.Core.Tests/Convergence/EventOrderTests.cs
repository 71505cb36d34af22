using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>Located times, and solutions behind a jump of state and right-hand side, converge as fast as the smooth solution.</summary>
public class EventOrderTests
{
    private static readonly double[] Places = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8];

    [Fact]
    public void The_event_time_converges_with_the_order_of_the_dense_output()
    {
        double order = ObservedOrder.Fit(16, 2, TimeError<Tsitouras54>);
        Assert.InRange(order, 4.7, 5.4);
    }

    [Fact]
    public void The_solution_converges_with_full_order_across_a_jump_and_a_switch()
    {
        double order = ObservedOrder.Fit(32, 2, EndError<Tsitouras54>);
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

    /// <summary>Largest error of the event time [s], with the event at seven places of its step.</summary>
    internal static double TimeError<TMethod>(int steps)
        where TMethod : struct, IOneStepMethod => Places.Max(place => Across<TMethod>(steps + place).TimeError);

    /// <summary>Largest error at the stop time, with the event at seven places of its step.</summary>
    internal static double EndError<TMethod>(int steps)
        where TMethod : struct, IOneStepMethod => Places.Max(place => Across<TMethod>(steps + place).EndError);

    private static (double TimeError, double EndError) Across<TMethod>(double stepsToEvent)
        where TMethod : struct, IOneStepMethod
    {
        var integrator = new Integrator<TMethod>(ObservedOrder.Sharp, [1.0]) { FixedStep = JumpAndSwitch.EventTime / stepsToEvent };
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
