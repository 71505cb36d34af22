using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>Work is counted, bounded and repeatable; steps allocate nothing.</summary>
public class WorkTests
{
    [Fact]
    public void Work_of_reference_problems_is_pinned()
    {
        // Moves only when the method or its control is changed on purpose.
        Assert.Equal(new SolverWork(57, 0, 344, 0), Work<CosineGrowth>());
        Assert.Equal(new SolverWork(55, 0, 332, 0), Work<LorentzCurve>());
        Assert.Equal(new SolverWork(73, 0, 440, 0), Work<ForcedOscillator>());
        Assert.Equal(new SolverWork(116, 0, 698, 0), Work<KeplerOrbit>());
    }

    [Fact]
    public void Derivative_calls_are_six_a_try_and_two_a_start()
    {
        SolverWork work = Work<KeplerOrbit>();
        Assert.Equal(2 + 6 * (work.AcceptedSteps + work.RejectedSteps), work.DerivativeCalls);
    }

    [Fact]
    public void Event_calls_are_one_a_start_and_one_a_part_where_nothing_happens()
    {
        var system = new TimeFunctions((_ => 1, Watching.Note));
        Integrator<Tsitouras54> integrator = Watching.Steps(0.1, 4);
        integrator.Go(ref system, 1);
        Assert.Equal(1 + 4 * 10, integrator.Statistics.EventCalls);
    }

    [Fact]
    public void Locating_an_event_is_cheap()
    {
        var ball = new BouncingBall(Crossing.Falling);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        integrator.State[1] = 20;
        integrator.Go(ref ball, 10);
        Assert.InRange(integrator.Statistics.EventCalls - 4 * integrator.Statistics.AcceptedSteps, 1, 20);
    }

    [Fact]
    public void The_same_run_gives_the_same_bits()
    {
        double[] Run()
        {
            var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, KeplerOrbit.Scales);
            KeplerOrbit.Exact(0).CopyTo(integrator.State);
            var orbit = default(KeplerOrbit);
            integrator.Go(ref orbit, KeplerOrbit.Stop);
            return integrator.State.ToArray();
        }

        Assert.Equal(Run(), Run());
    }

    [Fact]
    public void An_integrator_used_before_gives_the_same_bits_as_a_new_one()
    {
        var used = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        var fresh = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        var ball = new BouncingBall(Crossing.Falling);
        used.State[1] = 3;
        used.Go(ref ball, 10);
        used.Time = 0;
        foreach (Integrator<Tsitouras54> integrator in new[] { used, fresh })
        {
            ForcedOscillator.Exact(0).CopyTo(integrator.State);
            var oscillator = default(ForcedOscillator);
            integrator.Go(ref oscillator, 1);
        }

        Assert.Equal(fresh.State.ToArray(), used.State.ToArray());
    }

    [Fact]
    public void Accepted_and_refused_steps_allocate_nothing() => Assert.Equal(0, AllocatedBy<Tsitouras54>());

    internal static long AllocatedBy<TMethod>()
        where TMethod : struct, IOneStepMethod
    {
        Integrator<TMethod> integrator = null!;
        int steps = 0;
        long allocated = Allocated.By(() =>
        {
            integrator = new Integrator<TMethod>(SolverOptions.Default with { RelativeTolerance = 1e-9 }, [1.0, 1.0]);
            var ball = new BouncingBall(Crossing.Either, endsPhase: false);
            var oscillator = default(WatchedOscillator);
            integrator.State[1] = 20;
            integrator.Run(ref ball, 1, null, CancellationToken.None);
            integrator.Run(ref oscillator, 20, null, CancellationToken.None);
            steps = integrator.Statistics.AcceptedSteps;
            return () => integrator.Run(ref oscillator, 30, null, CancellationToken.None);
        });
        Assert.InRange(integrator.Statistics.AcceptedSteps - steps, 50, 5000);
        Assert.InRange(integrator.Fired.Length, 3, 4);
        return allocated;
    }

    private static SolverWork Work<TProblem>()
        where TProblem : struct, ITestProblem
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, TProblem.Scales) { Time = TProblem.Start };
        TProblem.Exact(TProblem.Start).CopyTo(integrator.State);
        var problem = default(TProblem);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref problem, TProblem.Stop));
        return integrator.Statistics;
    }

    /// <summary>A forced oscillator with its zero passages watched, all members its own: nothing is boxed.</summary>
    private readonly struct WatchedOscillator : IOdeSystem
    {
        public int Dimension => 2;

        public int EventCount => 1;

        public EventRule Rule(int index) => new(Crossing.Either, EndsPhase: false);

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            dydt[0] = y[1];
            dydt[1] = Math.Cos(0.5 * t) - y[0] - 0.01 * y[1];
        }

        public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) => values[0] = y[0];
    }
}
