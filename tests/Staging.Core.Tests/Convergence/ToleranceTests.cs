using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Convergence;

/// <summary>In adaptive runs the error is proportional to the tolerance.</summary>
public class ToleranceTests
{
    [Fact]
    public void Explicit_on_cosine_growth() => Proportional<Tsitouras54, CosineGrowth>(1e-5, 1e-12);

    [Fact]
    public void Explicit_on_the_Lorentz_curve() => Proportional<Tsitouras54, LorentzCurve>(1e-5, 1e-12);

    [Fact]
    public void Explicit_on_the_forced_oscillator() => Proportional<Tsitouras54, ForcedOscillator>(1e-5, 1e-12);

    [Fact]
    public void Explicit_on_coupled_logarithms() => Proportional<Tsitouras54, CoupledLogarithms>(1e-5, 1e-12);

    [Fact]
    public void Implicit_on_cosine_growth() => Proportional<Rodas43, CosineGrowth>(1e-5, 1e-10);

    [Fact]
    public void Implicit_on_the_Lorentz_curve() => Proportional<Rodas43, LorentzCurve>(1e-5, 1e-10);

    [Fact]
    public void Implicit_on_coupled_logarithms_by_differences() => Proportional<Rodas43, WithoutJacobian<CoupledLogarithms>>(1e-5, 1e-10);

    private static void Proportional<TMethod, TProblem>(double loosest, double tightest)
        where TMethod : struct, IOneStepMethod
        where TProblem : struct, ITestProblem
    {
        List<double> x = [], y = [];
        for (double tolerance = loosest; tolerance > 0.5 * tightest; tolerance /= 10)
        {
            double error = Error<TMethod, TProblem>(tolerance);
            Assert.InRange(error, 0, 50 * tolerance);
            x.Add(Math.Log10(tolerance));
            y.Add(Math.Log10(error));
        }

        double meanX = x.Average(), meanY = y.Average();
        double slope = x.Zip(y, (a, b) => (a - meanX) * (b - meanY)).Sum() / x.Sum(a => (a - meanX) * (a - meanX));
        Assert.InRange(slope, 0.85, 1.15);
    }

    private static double Error<TMethod, TProblem>(double tolerance)
        where TMethod : struct, IOneStepMethod
        where TProblem : struct, ITestProblem
    {
        SolverOptions options = SolverOptions.Default with { RelativeTolerance = tolerance, ScaledAbsoluteTolerance = tolerance };
        var integrator = new Integrator<TMethod>(options, TProblem.Scales) { Time = TProblem.Start };
        TProblem.Exact(TProblem.Start).CopyTo(integrator.State);
        var problem = default(TProblem);
        var track = new DenseTrack(problem.Dimension, TMethod.DenseDegree);
        Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref problem, TProblem.Stop, track));
        return ObservedOrder.LargestDeviation<TProblem>(track, [1]);
    }
}
