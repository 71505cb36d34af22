using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>Every kind of failure is a value that says what, where and when; the state reached before it is kept.</summary>
public class FailureTests
{
    [Fact]
    public void Too_many_steps()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default with { MaxSteps = 7 }, [1.0]);
        integrator.State[0] = 1;
        var system = default(CosineGrowth);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 5));
        Assert.Equal(SolverFailureKind.TooManySteps, integrator.Failure!.Kind);
        Assert.Equal(7, integrator.Statistics.AcceptedSteps + integrator.Statistics.RejectedSteps);
        Assert.InRange(integrator.Time, 1e-6, 5);
        Assert.Equal(CosineGrowth.Exact(integrator.Time)[0], integrator.State[0], 1e-7);
    }

    [Fact]
    public void The_count_of_steps_runs_through_all_phases()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default with { MaxSteps = 10 }, [1.0]);
        var system = new ConstantSlope(1);
        int phases = 0;
        while (integrator.Go(ref system, integrator.Time + 1e-3) == PhaseEnd.StopTime)
            phases++;
        Assert.InRange(phases, 3, 10);
        Assert.Equal(SolverFailureKind.TooManySteps, integrator.Failure!.Kind);
    }

    [Fact]
    public void A_solution_that_runs_away_in_finite_time_makes_the_step_too_small()
    {
        // y' = y^2, y(0) = 1: y = 1/(1 - t).
        var system = new Scalar((_, y) => y * y);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 2));
        Assert.NotEqual(SolverFailureKind.TooManySteps, integrator.Failure!.Kind);
        Assert.Equal(1, integrator.Time, 1e-6);
    }

    [Fact]
    public void A_slope_too_rough_for_the_tolerance_makes_the_step_too_small()
    {
        // Noise of a hash: no step is short enough.
        var system = new Scalar((t, _) => 1e8 * Math.Sin(1e9 * BitConverter.DoubleToInt64Bits(t)));
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { Time = 1 };
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 2));
        Assert.Equal(SolverFailureKind.StepTooSmall, integrator.Failure!.Kind);
        Assert.InRange(integrator.Statistics.RejectedSteps, 1, 200);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_state_that_is_not_finite_at_the_start(double bad)
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0, 1.0]);
        integrator.State[1] = bad;
        var system = default(ForcedOscillator);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.Equal(SolverFailureKind.NonFiniteState, integrator.Failure!.Kind);
        Assert.Contains("State 1", integrator.Failure.Message, StringComparison.Ordinal);
        Assert.Equal(0, integrator.Statistics.DerivativeCalls);
    }

    [Fact]
    public void A_slope_that_is_not_finite_at_the_start()
    {
        var system = new Scalar((_, y) => 1 / y);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.Equal(SolverFailureKind.NonFiniteState, integrator.Failure!.Kind);
        Assert.Contains("derivative of state 0", integrator.Failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.NegativeInfinity)]
    public void A_slope_that_stops_being_finite_on_the_way_ends_the_run_there_and_soon(double bad)
    {
        var system = new Scalar((t, _) => t <= 0.7 ? 1 : bad);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref system, 1));
        Assert.Equal(SolverFailureKind.NonFiniteState, integrator.Failure!.Kind);
        Assert.Equal(0.7, integrator.Time, 1e-12);
        Assert.Equal(0.7, integrator.State[0], 1e-12);
        Assert.Equal(integrator.Time, integrator.Failure.Time.Seconds);
        Assert.InRange(integrator.Statistics.RejectedSteps, 1, 300);
    }

    [Fact]
    public void A_domain_left_only_by_a_trial_step_is_no_failure()
    {
        // The square root is not a number below zero: trial steps that overshoot are refused, the solution stays inside.
        var system = new Scalar((_, y) => -10 * Math.Sqrt(y) * y);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default with { RelativeTolerance = 1e-3 }, [1.0]);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref system, 10));
        Assert.Equal(1 / (51.0 * 51.0), integrator.State[0], 1e-5);
    }

    [Fact]
    public void A_failure_is_forgotten_when_the_next_phase_runs()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        var bad = new Scalar((_, _) => double.NaN);
        Assert.Equal(PhaseEnd.Failed, integrator.Go(ref bad, 1));
        var good = new ConstantSlope(2);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref good, 1));
        Assert.Null(integrator.Failure);
        Assert.Equal(2, integrator.State[0], 1e-13);
    }

    [Fact]
    public void Messages_do_not_depend_on_the_culture_of_the_machine()
    {
        var comma = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = comma;
            var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { Time = 0.5 };
            var bad = new Scalar((_, _) => double.NaN);
            integrator.Go(ref bad, 1);
            Assert.Contains("0.5 s", integrator.Failure!.Message, StringComparison.Ordinal);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Cancellation_is_seen_within_a_step()
    {
        using var source = new CancellationTokenSource();
        int calls = 0;
        var system = new Scalar((_, _) =>
        {
            if (++calls == 20)
                source.Cancel();
            return 1;
        });
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { FixedStep = 1e-3 };
        Assert.Throws<OperationCanceledException>(() => integrator.Run(ref system, 1, null, source.Token));
        Assert.InRange(calls, 20, 26);
        Assert.InRange(integrator.Time, 1e-3, 5e-3);
    }

    [Fact]
    public void Wrong_arguments_are_refused_at_once()
    {
        Assert.Throws<ArgumentException>(() => new Integrator<Tsitouras54>(SolverOptions.Default, []));
        Assert.Throws<ArgumentException>(() => new Integrator<Tsitouras54>(SolverOptions.Default, [1, 0]));
        Assert.Throws<ArgumentException>(() => new Integrator<Tsitouras54>(SolverOptions.Default, [double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { FixedStep = 0 });
        var oscillator = default(ForcedOscillator);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        Assert.Throws<ArgumentException>(() => integrator.Go(ref oscillator, 1));
    }
}
