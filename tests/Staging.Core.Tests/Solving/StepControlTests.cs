using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Solving;

/// <summary>What the step control learns from accepted, refused and shortened steps, and how a phase begins.</summary>
public class StepControlTests
{
    private static StepControl Started(double step)
    {
        var control = new StepControl(5, 0.4);
        control.Restart(step);
        return control;
    }

    private static double Square(double error) => error * error;

    [Fact]
    public void A_step_without_error_grows_sixfold_and_no_more()
    {
        StepControl control = Started(1);
        control.Accept(1, 0, afterRejection: false);
        Assert.Equal(6, control.Suggested);
    }

    [Fact]
    public void A_step_that_just_passed_shrinks_by_the_safety()
    {
        StepControl control = Started(1);
        control.Accept(1, 1, afterRejection: false);
        Assert.Equal(0.9, control.Suggested, 1e-12);
    }

    [Fact]
    public void After_a_refusal_the_step_does_not_grow()
    {
        StepControl control = Started(1);
        control.Reject(1, Square(32));
        Assert.Equal(0.45, control.Suggested, 1e-12);
        control.Accept(control.Suggested, Square(1e-6), afterRejection: true);
        Assert.Equal(0.45, control.Suggested, 1e-12);
    }

    [Fact]
    public void A_refusal_shrinks_to_a_fifth_at_most_and_to_a_tenth_when_nothing_is_known()
    {
        StepControl control = Started(1);
        control.Reject(1, Square(1e30));
        Assert.Equal(0.2, control.Suggested, 1e-12);
        control.Reject(0.2, double.PositiveInfinity);
        Assert.Equal(0.02, control.Suggested, 1e-12);
    }

    [Fact]
    public void A_step_cut_short_does_not_unteach_a_longer_one()
    {
        StepControl control = Started(1);
        control.Accept(1e-6, Square(1e-20), afterRejection: false);
        Assert.Equal(1, control.Suggested);
        // Nor does its tiny error weigh on the control of the next.
        control.Accept(1, 1, afterRejection: false);
        Assert.Equal(0.9, control.Suggested, 1e-12);
    }

    [Fact]
    public void A_step_cut_little_but_nearly_refused_does_teach()
    {
        StepControl control = Started(1);
        control.Accept(0.99, 1, afterRejection: false);
        Assert.Equal(0.891, control.Suggested, 1e-12);
    }

    [Theory]
    [InlineData(1e-6)]
    [InlineData(1.0)]
    [InlineData(1e6)]
    public void The_first_step_scales_with_the_unit_of_time(double unit)
    {
        double First(double timeUnit)
        {
            var system = new Scalar((t, y) => -(y - Math.Cos(t / timeUnit)) / timeUnit);
            var scale = new ErrorScale(SolverOptions.Default, [1.0]);
            Span<double> work = stackalloc double[2];
            return FirstStep.Estimate(ref system, scale, 5, 0, [2], [-1 / timeUnit], 10 * timeUnit, 1e9, work[..1], work[1..]);
        }

        Assert.Equal(First(1), First(unit) / unit, 1e-9);
        Assert.InRange(First(1), 1e-4, 0.1);
    }

    [Fact]
    public void The_first_step_of_a_run_is_accepted_or_nearly_so()
    {
        foreach (double rate in new[] { 1e-3, 1.0, 1e3, 1e6 })
        {
            var system = new Scalar((_, y) => -rate * y);
            SolverOptions options = SolverOptions.Default with { LongestStep = UnitsNet.Duration.FromHours(1) };
            var integrator = new Integrator<Tsitouras54>(options, [1.0]);
            integrator.State[0] = 1;
            integrator.Go(ref system, 1 / rate);
            Assert.InRange(integrator.Statistics.RejectedSteps, 0, 1);
            Assert.InRange(integrator.Statistics.AcceptedSteps, 5, 40);
        }
    }

    [Fact]
    public void Many_stops_on_a_smooth_solution_cost_one_evaluation_each()
    {
        // Steps are cut by the stops but the suggestion survives them: no first step is estimated again, no sliver steps are taken.
        var system = default(CosineGrowth);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        for (int i = 1; i <= 500; i++)
            integrator.Go(ref system, 0.01 * i);
        Assert.InRange(integrator.Statistics.AcceptedSteps, 500, 520);
        Assert.Equal(6 * integrator.Statistics.AcceptedSteps + 500 + 1, integrator.Statistics.DerivativeCalls);
    }

    [Fact]
    public void A_phase_with_another_slope_starts_with_a_new_first_step()
    {
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        var slow = new Scalar((_, y) => -1e-3 * y);
        integrator.State[0] = 1;
        integrator.Go(ref slow, 100);
        int rejected = integrator.Statistics.RejectedSteps;
        var fast = new Scalar((_, y) => -1e5 * y);
        integrator.Go(ref fast, 100.001);
        Assert.InRange(integrator.Statistics.RejectedSteps - rejected, 0, 1);
    }

    [Fact]
    public void A_tiny_phase_does_not_teach_tiny_steps()
    {
        var system = default(CosineGrowth);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        integrator.State[0] = 1;
        integrator.Go(ref system, 1e-12);
        integrator.Go(ref system, 5);
        var whole = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]);
        whole.State[0] = 1;
        whole.Go(ref system, 5);
        Assert.InRange(integrator.Statistics.AcceptedSteps, 1, whole.Statistics.AcceptedSteps + 3);
    }

    [Fact]
    public void An_estimate_of_the_first_step_is_never_too_small_to_be_tried()
    {
        // An explicit probe of a stiff system sees slopes that the solution never comes to: they would ask for 1e-31 s.
        var system = new Scalar((t, _) => t == 0 ? 1 : 1e60);
        var scale = new ErrorScale(SolverOptions.Default, [1.0]);
        double first = FirstStep.Estimate(ref system, scale, 4, 0, [1.0], [1.0], 0.2, double.PositiveInfinity, new double[1], new double[1]);
        Assert.InRange(first, 4 * 2.3e-16 * 0.2, 1e-14);
    }

    [Fact]
    public void No_step_is_longer_than_allowed_by_more_than_the_stretch_of_the_last()
    {
        var system = new ConstantSlope(1);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default with { LongestStep = UnitsNet.Duration.FromSeconds(0.125) }, [1.0]);
        var track = new DenseTrack(1, Tsitouras54.DenseDegree);
        integrator.Go(ref system, 10, track);
        Assert.InRange(track.Count, 80, 95);
        for (int i = 0; i < track.Count; i++)
            Assert.InRange(track.LengthOf(i), 0, 0.125 / 0.99);
    }

    [Fact]
    public void Fixed_steps_are_equal_and_the_last_is_what_remains()
    {
        var system = default(CosineGrowth);
        var integrator = new Integrator<Tsitouras54>(SolverOptions.Default, [1.0]) { FixedStep = 0.3 };
        integrator.State[0] = 1;
        var track = new DenseTrack(1, Tsitouras54.DenseDegree);
        integrator.Go(ref system, 1, track);
        Assert.Equal(4, track.Count);
        Assert.Equal([0.3, 0.3, 0.3, 0.1], Enumerable.Range(0, 4).Select(i => Math.Round(track.LengthOf(i), 12)));
        Assert.Equal(1, integrator.Time);
        Assert.Equal(new SolverWork(4, 0, 25, 0), integrator.Statistics);
    }
}
