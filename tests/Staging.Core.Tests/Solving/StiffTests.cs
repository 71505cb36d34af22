using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>The implicit method at work: stiff problems in few steps, with or without a Jacobian, nothing allocated, nothing outside the interval.</summary>
public class StiffTests
{
    [Fact]
    public void A_stiff_problem_takes_steps_of_the_solution_not_of_the_rate()
    {
        Integrator<Rodas43> integrator = Solve<ProtheroRobinson.Stiff>(SolverOptions.Default);
        Assert.InRange(integrator.Statistics.AcceptedSteps, 20, 400);
        Assert.Equal(Math.Cos(3), integrator.State[0], 1e-8);
    }

    [Fact]
    public void A_stiff_non_linear_problem_keeps_its_tolerance()
    {
        Integrator<Rodas43> integrator = Solve<KapsProblem>(SolverOptions.Default);
        Assert.InRange(integrator.Statistics.AcceptedSteps, 20, 400);
        Assert.All(integrator.State.ToArray().Zip(KapsProblem.Exact(KapsProblem.Stop)), p => Assert.Equal(p.Second, p.First, 1e-7));
    }

    [Fact]
    public void Differences_do_as_well_as_the_analytic_Jacobian()
    {
        Integrator<Rodas43> analytic = Solve<KapsProblem>(SolverOptions.Default);
        Integrator<Rodas43> differences = Solve<WithoutJacobian<KapsProblem>>(SolverOptions.Default);
        Assert.Equal(analytic.Statistics.AcceptedSteps, differences.Statistics.AcceptedSteps, 5.0);
        Assert.All(analytic.State.ToArray().Zip(differences.State.ToArray()), p => Assert.Equal(p.First, p.Second, 1e-8));
    }

    /// <summary>The same steps; results differ by the order in which the sum of the integral is rounded.</summary>
    [Fact]
    public void An_integral_taken_along_is_the_one_that_is_solved_for()
    {
        KapsWithIntegral along = new(1), solved = new(0);
        Integrator<Rodas43> one = Solve(ref along), other = Solve(ref solved);
        Assert.Equal(other.Statistics, one.Statistics);
        Assert.All(other.State.ToArray().Zip(one.State.ToArray()), p => Assert.Equal(p.First, p.Second, 1e-13));
        Assert.Equal(KapsWithIntegral.Exact(KapsWithIntegral.Stop)[0], one.State[0], 1e-8);

        static Integrator<Rodas43> Solve(ref KapsWithIntegral system)
        {
            var integrator = new Integrator<Rodas43>(SolverOptions.Default, KapsWithIntegral.Scales);
            KapsWithIntegral.Exact(0).CopyTo(integrator.State);
            integrator.Go(ref system, KapsWithIntegral.Stop);
            return integrator;
        }
    }

    /// <summary>A tolerance of a hundred times the stock lets it go anywhere; its domain does not.</summary>
    [Fact]
    public void A_step_that_leaves_the_domain_is_repeated_shorter()
    {
        (double anywhere, _) = Drained(new Draining(false));
        (double above, int repeated) = Drained(new Draining(true));
        Assert.True(anywhere < 0);
        Assert.InRange(above, double.Epsilon, 0.01);
        Assert.InRange(repeated, 1, 20);

        static (double Left, int Repeated) Drained(Draining system)
        {
            var integrator = new Integrator<Tsitouras54>(new() { RelativeTolerance = 1e-2, ScaledAbsoluteTolerance = 1e-5 }, [1e7]);
            integrator.State[0] = 1;
            Assert.Equal(PhaseEnd.StopTime, integrator.Run(ref system, 0.01));
            return (integrator.State[0], integrator.Statistics.RejectedSteps);
        }
    }

    [Fact]
    public void Work_is_counted()
    {
        SolverWork analytic = Solve<KapsProblem>(SolverOptions.Default).Statistics;
        int tries = analytic.AcceptedSteps + analytic.RejectedSteps;
        Assert.Equal(analytic.AcceptedSteps, analytic.JacobianCalls);
        Assert.Equal(tries, analytic.Factorisations);
        // Five a try, one a step for the slope, one for the first step.
        Assert.Equal(5 * tries + analytic.AcceptedSteps + 1, analytic.DerivativeCalls);

        SolverWork differences = Solve<WithoutJacobian<KapsProblem>>(SolverOptions.Default).Statistics;
        tries = differences.AcceptedSteps + differences.RejectedSteps;
        // And by differences one a state and one in time a Jacobian.
        Assert.Equal(5 * tries + (1 + 2 + 1) * differences.AcceptedSteps + 1, differences.DerivativeCalls);
    }

    [Fact]
    public void Work_of_reference_problems_is_pinned()
    {
        // Moves only when the method or its control is changed on purpose.
        Assert.Equal(new SolverWork(56, 2, 347, 0) { JacobianCalls = 56, Factorisations = 58 }, Solve<ProtheroRobinson.Stiff>(SolverOptions.Default).Statistics);
        Assert.Equal(new SolverWork(105, 0, 631, 0) { JacobianCalls = 105, Factorisations = 105 }, Solve<KapsProblem>(SolverOptions.Default).Statistics);
    }

    [Fact]
    public void A_refused_step_reuses_the_Jacobian()
    {
        // A front that a large first step jumps onto: several tries from one point.
        var system = new Scalar((t, y) => 1e3 * (Math.Tanh(1e3 * (t - 0.5)) - y));
        var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0]);
        integrator.State[0] = -1;
        integrator.Go(ref system, 1);
        Assert.InRange(integrator.Statistics.RejectedSteps, 1, 100);
        Assert.Equal(integrator.Statistics.AcceptedSteps, integrator.Statistics.JacobianCalls);
        Assert.Equal(1, integrator.State[0], 1e-7);
    }

    [Fact]
    public void Steps_allocate_nothing() => Assert.Equal(0, WorkTests.AllocatedBy<Rodas43>());

    [Fact]
    public void Nothing_is_evaluated_outside_the_interval()
    {
        foreach (double start in new[] { 0.0, 0.1, 1000.0 / 3 })
        {
            foreach (double length in new[] { 1e-9, 1e-3, 0.7, 3.1 })
            {
                var system = new TimeFunctions((t => Math.Sin(40 * t), Watching.Note));
                var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0]) { Time = start };
                double stop = start + length;
                Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, stop));
                Assert.All(system.Times, t => Assert.InRange(t, start, stop));
            }
        }
    }

    [Fact]
    public void Events_are_located_on_its_dense_output()
    {
        var ball = new BouncingBall(Crossing.Falling);
        var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0, 1.0]);
        for (int bounce = 1; bounce <= 20; bounce++)
        {
            integrator.State[0] = 0;
            integrator.State[1] = 2;
            Assert.Equal(PhaseEnd.Event, integrator.Go(ref ball, 100));
            Assert.Equal(bounce * 4 / BouncingBall.G, integrator.Time, 2e-9 * bounce);
        }
    }

    [Fact]
    public void A_Jacobian_that_is_not_finite_is_a_typed_failure()
    {
        // The slope is finite at zero only on the solution itself; every moved state is not a number.
        var system = new Scalar((t, y) => y == 1 ? 0 : double.NaN);
        var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.Equal(SolverFailureKind.NonFiniteState, integrator.Failure!.Kind);
    }

    [Fact]
    public void Differences_turn_back_where_the_domain_ends()
    {
        // The slope is not a number above 1; the state sits on the edge and moves down, the first increment may go either way.
        var system = new Scalar((t, y) => y > 1 ? double.NaN : t - t * y);
        var integrator = new Integrator<Rodas43>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 1));
        Assert.Equal(1, integrator.State[0]);
    }

    private static Integrator<Rodas43> Solve<TProblem>(SolverOptions options)
        where TProblem : struct, ITestProblem
    {
        var integrator = new Integrator<Rodas43>(options, TProblem.Scales) { Time = TProblem.Start };
        TProblem.Exact(TProblem.Start).CopyTo(integrator.State);
        var problem = default(TProblem);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref problem, TProblem.Stop));
        return integrator;
    }
}
