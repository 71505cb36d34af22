using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>The explicit pair shows its order on problems that depend on time.</summary>
public class ExplicitOrderTests
{
    private const double Nominal = 5;
    private const double Within = 0.2;

    [Fact]
    public void Fifth_order_on_cosine_growth() =>
        Assert.Equal(Nominal, ObservedOrder.Global<Tsitouras54, CosineGrowth>(160, 1), Within);

    [Fact]
    public void Fifth_order_on_the_Lorentz_curve() =>
        Assert.Equal(Nominal, ObservedOrder.Global<Tsitouras54, LorentzCurve>(80, 2), Within);

    [Fact]
    public void Fifth_order_on_the_forced_oscillator() =>
        Assert.Equal(Nominal, ObservedOrder.Global<Tsitouras54, ForcedOscillator>(40, 3), Within);

    [Fact]
    public void Fifth_order_on_coupled_logarithms() =>
        // Comes down to five from above: the sixth-order part of the error dies out late here.
        Assert.InRange(ObservedOrder.Global<Tsitouras54, CoupledLogarithms>(160, 1), Nominal - Within, 5.6);

    [Fact]
    public void Fifth_order_on_an_orbit() =>
        Assert.Equal(Nominal, ObservedOrder.Global<Tsitouras54, KeplerOrbit>(160, 2), Within);

    [Fact]
    public void The_dense_output_is_of_the_order_of_the_solution_inside_every_step()
    {
        Assert.InRange(ObservedOrder.OfDenseOutput<Tsitouras54, CosineGrowth>(40, 3), 4.8, 5.7);
        Assert.InRange(ObservedOrder.OfDenseOutput<Tsitouras54, LorentzCurve>(40, 3), 4.8, 5.7);
        Assert.InRange(ObservedOrder.OfDenseOutput<Tsitouras54, ForcedOscillator>(40, 3), 4.8, 5.7);
        Assert.InRange(ObservedOrder.OfDenseOutput<Tsitouras54, CoupledLogarithms>(80, 3), 4.8, 5.7);
    }
}
