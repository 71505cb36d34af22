using Staging.Core.Solving;

namespace Staging.Core.Validation.Twin;

/// <summary>Where there is no closed form, two integrators that share nothing must agree.</summary>
public class SolvingTwin
{
    private static SolverOptions Tight { get; } = SolverOptions.Default with { RelativeTolerance = 1e-11, ScaledAbsoluteTolerance = 1e-11 };

    [Fact]
    public void The_twin_itself_reproduces_an_exponential_to_thirteen_digits()
    {
        var system = new Decay();
        double[] y = [1];
        SolvingExtrapolation.Run(ref system, 0, 2, 8, y);
        // Extrapolation multiplies the rounding of its columns by the sizes of its weights, which add up to some tens.
        Assert.Equal(Math.Exp(-2), y[0], 1e-14);
    }

    [Fact]
    public void A_driven_pendulum_by_the_explicit_method() => Agrees<Tsitouras54>(2e-9);

    [Fact]
    public void A_driven_pendulum_by_the_implicit_method() => Agrees<Rodas43>(2e-9);

    private static void Agrees<TMethod>(double within)
        where TMethod : struct, IOneStepMethod
    {
        var pendulum = default(DrivenPendulum);
        double[] twin = [1, 0];
        SolvingExtrapolation.Run(ref pendulum, 0, 10, 200, twin);
        var integrator = new Integrator<TMethod>(Tight, [1, 1]);
        integrator.State[0] = 1;
        Assert.Equal(PhaseEnd.StopTime, integrator.Run(ref pendulum, 10, null, TestContext.Current.CancellationToken));
        Assert.Equal(twin[0], integrator.State[0], within);
        Assert.Equal(twin[1], integrator.State[1], within);
    }

    private readonly struct Decay : IPublishedProblem
    {
        public int Dimension => 1;

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = -y[0];
    }

    /// <summary>A damped pendulum under a harmonic torque: no closed form, depends on time.</summary>
    private readonly struct DrivenPendulum : IPublishedProblem
    {
        public int Dimension => 2;

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
        {
            dydt[0] = y[1];
            dydt[1] = -Math.Sin(y[0]) - 0.2 * y[1] + 0.7 * Math.Cos(0.9 * t);
        }
    }
}
