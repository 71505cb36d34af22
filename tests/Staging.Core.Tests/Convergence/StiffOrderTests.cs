using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>The implicit method shows its order on problems that depend on time, stiff and not, with analytic Jacobian and by differences.</summary>
public class StiffOrderTests
{
    private const double Nominal = 4;
    private const double Within = 0.2;

    [Fact]
    public void Fourth_order_on_cosine_growth() => Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, CosineGrowth>(80, 3), Within);

    [Fact]
    public void Fourth_order_on_the_Lorentz_curve() => Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, LorentzCurve>(80, 3), Within);

    [Fact]
    public void Fourth_order_on_the_forced_oscillator() => Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, ForcedOscillator>(40, 3), Within);

    [Fact]
    public void Fourth_order_on_coupled_logarithms() => Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, CoupledLogarithms>(320, 2), Within);

    [Fact]
    public void Fourth_order_by_differences()
    {
        Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, WithoutJacobian<CosineGrowth>>(80, 2), Within);
        Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, WithoutJacobian<CoupledLogarithms>>(160, 2), 0.3);
    }

    [Fact]
    public void Fourth_order_on_Prothero_and_Robinson_once_the_step_resolves_the_rate() =>
        Assert.Equal(Nominal, ObservedOrder.Global<Rodas43, ProtheroRobinson.Mild>(40, 3), Within);

    [Fact]
    public void Where_the_rate_is_not_resolved_the_order_falls_but_the_error_is_the_step_over_the_rate()
    {
        // Order reduction of one-step methods on stiff non-autonomous problems (Prothero and Robinson 1974; Hairer and Wanner 1996, section IV.15).
        // Measured here: an error of 0.02 h/rate, which is 1e-8 and less; first order in h, but first order in 1/rate too.
        foreach (int steps in new[] { 10, 20, 40, 80, 160, 320, 640 })
            Assert.InRange(ObservedOrder.LargestError<Rodas43, ProtheroRobinson.Stiff>(steps, [1]), 0, 0.04 * 3 / steps / 1e6);
    }

    [Fact]
    public void Fourth_order_or_better_on_a_stiff_non_linear_problem_until_that_floor() =>
        Assert.InRange(ObservedOrder.Global<Rodas43, KapsProblem>(10, 2), Nominal - Within, 5.5);

    [Fact]
    public void The_dense_output_is_of_the_order_of_the_solution_where_nothing_is_stiff()
    {
        Assert.Equal(Nominal, ObservedOrder.OfDenseOutput<Rodas43, CosineGrowth>(40, 3), Within);
        Assert.Equal(Nominal, ObservedOrder.OfDenseOutput<Rodas43, LorentzCurve>(80, 3), Within);
        Assert.Equal(Nominal, ObservedOrder.OfDenseOutput<Rodas43, CoupledLogarithms>(40, 3), Within);
    }

    [Fact]
    public void The_dense_output_is_of_order_three_where_the_problem_is_stiff()
    {
        Assert.Equal(3, ObservedOrder.OfDenseOutput<Rodas43, ProtheroRobinson.Stiff>(10, 4), Within);
        Assert.Equal(3, ObservedOrder.OfDenseOutput<Rodas43, KapsProblem>(10, 4), Within);
    }

    [Fact]
    public void Full_order_across_a_jump_and_a_switch() =>
        Assert.InRange(ObservedOrder.Fit(32, 3, EventOrderTests.EndError<Rodas43>), 3.8, 4.4);

    [Fact]
    public void The_event_time_converges_with_the_order_of_the_dense_output() =>
        Assert.InRange(ObservedOrder.Fit(16, 3, EventOrderTests.TimeError<Rodas43>), 3.7, 4.4);
}
