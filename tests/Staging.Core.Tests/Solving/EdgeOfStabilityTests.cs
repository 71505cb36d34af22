using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>Where stability binds the steps of the explicit method, and how a phase finds that out.</summary>
public class EdgeOfStabilityTests
{
    /// <summary>On y' = -rate y a step multiplies the state by the stability polynomial.</summary>
    [Fact]
    public void The_edge_is_where_the_stability_polynomial_passes_one()
    {
        double z = 0;
        while (Math.Abs(Step(z + 0.001).Growth) <= 1)
            z += 0.001;
        Assert.Equal(Math.Floor(10 * z) / 10, Tsitouras54.EdgeOfStability);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(3.3)]
    [InlineData(40)]
    public void The_rate_of_a_decay_is_its_rate(double z) => Assert.Equal(z, Step(z).Rate, 1e-9 * z);

    [Fact]
    public void A_phase_is_bound_after_fifteen_steps_and_free_after_six_in_a_row()
    {
        var watch = new EdgeWatch(3.3);
        Assert.Equal(15, StepsUntilBound(ref watch, _ => 3));
        watch = new EdgeWatch(3.3);
        Assert.Equal(19, StepsUntilBound(ref watch, i => i is 3 or 6 or 9 or 12 ? 1 : 3));
        watch = new EdgeWatch(3.3);
        Assert.Equal(14 + 6 + 15, StepsUntilBound(ref watch, i => i is > 14 and <= 20 ? 1 : 3));
        watch = new EdgeWatch(3.3);
        Assert.Equal(14 + 5 + 1, StepsUntilBound(ref watch, i => i is > 14 and <= 19 ? 1 : 3));
        watch = new EdgeWatch(3.3);
        Assert.Equal(int.MaxValue, StepsUntilBound(ref watch, _ => 2.8));
        Assert.Equal(int.MaxValue, StepsUntilBound(ref watch, _ => double.NaN));

        static int StepsUntilBound(ref EdgeWatch watch, Func<int, double> rateTimesStep)
        {
            for (int i = 1; i <= 1000; i++)
            {
                if (watch.Sees(rateTimesStep(i)))
                    return i;
            }

            return int.MaxValue;
        }
    }

    [Fact]
    public void A_stiff_phase_ends_at_the_edge_and_goes_on_where_it_ended()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { EndsAtEdge = true };
        integrator.State[0] = 1;
        var stiff = default(ProtheroRobinson.Stiff);
        Assert.Equal(PhaseEnd.AtEdge, integrator.Run(ref stiff, ProtheroRobinson.Stiff.Stop));
        Assert.Null(integrator.Failure);
        Assert.InRange(integrator.Statistics.AcceptedSteps, 15, 60);
        Assert.Equal(Math.Cos(integrator.Time), integrator.State[0], 1e-8);
        var mild = default(ProtheroRobinson.Mild);
        Assert.Equal(PhaseEnd.StopTime, integrator.Run(ref mild, ProtheroRobinson.Mild.Stop));
        Assert.Equal(Math.Cos(ProtheroRobinson.Mild.Stop), integrator.State[0], 1e-7);
    }

    [Fact]
    public void An_event_before_the_edge_is_kept_and_happens_once()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { EndsAtEdge = true };
        var marked = new Marked(1e-6);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.AtEdge, integrator.Run(ref marked, 1));
        FiredEvent passed = Assert.Single(integrator.Fired.ToArray());
        Assert.Equal(1e-6, passed.Time, 1e-9);
        Assert.Equal(PhaseEnd.AtEdge, integrator.Run(ref marked, 1));
        Assert.Empty(integrator.Fired.ToArray());
    }

    [Fact]
    public void A_method_without_an_edge_never_ends_there()
    {
        var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0]) { EndsAtEdge = true };
        integrator.State[0] = 1;
        var stiff = default(ProtheroRobinson.Stiff);
        Assert.Equal(PhaseEnd.StopTime, integrator.Run(ref stiff, ProtheroRobinson.Stiff.Stop));
    }

    /// <summary>A stiff state and an event at a time, which does not end the phase.</summary>
    private readonly struct Marked(double time) : IOdeSystem
    {
        public int Dimension => 1;

        public int EventCount => 1;

        public EventRule Rule(int index) => new(Crossing.Rising, false);

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = -1e7 * (y[0] - Math.Cos(t));

        public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) => values[0] = t - time;
    }

    /// <summary>One step of size one of y' = -rate y from 1.</summary>
    private static (double Growth, double Rate) Step(double rate)
    {
        var method = default(Tsitouras54);
        var decay = new Scalar((_, y) => -rate * y);
        SolverWork work = default;
        double[] y = [1], next = new double[1], error = new double[1];
        method.Allocate([1.0]);
        method.Begin(ref decay, 0, y, ref work);
        method.Step(ref decay, 0, 1, y, next, error, ref work);
        return (next[0], method.RateAtEnd(1, new ErrorScale(SolverOptions.Default, [1.0]), next, error));
    }
}
