using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Staging.Core.Solving;
using Staging.Core.Tests.TestProblems;

namespace Staging.Core.Tests.Properties;

/// <summary>Laws of any integration.</summary>
public class SolvingProperties
{
    private const double Tolerance = 1e-9;
    private const double AllowedGrowth = 100;

    private static SolverOptions Options { get; } = SolverOptions.Default with
    {
        RelativeTolerance = Tolerance,
        ScaledAbsoluteTolerance = Tolerance,
        LongestStep = UnitsNet.Duration.FromSeconds(100),
    };

    [Property(Arbitrary = [typeof(Fractions)], MaxTest = 200)]
    public bool A_stop_on_the_way_changes_nothing_beyond_tolerance(Fraction f)
    {
        double split = CoupledLogarithms.Stop * f.Value;
        double[] whole = Solve<CoupledLogarithms>(CoupledLogarithms.Stop);
        double[] parts = Solve<CoupledLogarithms>(split, CoupledLogarithms.Stop);
        return Close(whole, parts) && Close(parts, CoupledLogarithms.Exact(CoupledLogarithms.Stop));
    }

    [Property(Arbitrary = [typeof(Fractions)], MaxTest = 200)]
    public bool Shifting_the_clock_changes_nothing_in_an_autonomous_problem(Fraction f)
    {
        double shift = Math.Round(4096 * f.Value);
        var orbit = default(KeplerOrbit);
        var there = new Integrator<Tsitouras54>(Options, KeplerOrbit.Scales) { Time = shift };
        KeplerOrbit.Exact(0).CopyTo(there.State);
        there.Go(ref orbit, shift + 4);
        return Close(there.State.ToArray(), Solve<KeplerOrbit>(4.0));
    }

    [Property(Arbitrary = [typeof(Fractions)], MaxTest = 200)]
    public bool States_in_another_unit_with_scales_in_that_unit_take_the_same_steps(Fraction f)
    {
        // A power of two, so that the change of unit itself rounds nothing.
        double unit = Math.ScaleB(1, (int)(60 * f.Value) - 30);
        var system = new Scalar((t, y) => unit * Math.Sin(y / unit + t));
        var plain = new Scalar((t, y) => Math.Sin(y + t));
        var scaled = new Integrator<Tsitouras54>(Options, [unit]);
        var standard = new Integrator<Tsitouras54>(Options, [1.0]);
        scaled.State[0] = 0.5 * unit;
        standard.State[0] = 0.5;
        scaled.Go(ref system, 3);
        standard.Go(ref plain, 3);
        return scaled.Statistics == standard.Statistics && scaled.State[0] == unit * standard.State[0];
    }

    [Property(Arbitrary = [typeof(Fractions)], MaxTest = 200)]
    public bool A_linear_root_anywhere_is_found_once_within_tolerance(Fraction f)
    {
        FiredEvent[] fired = Watching.Events(0.17, 3, 1, (t => t - f.Value, Watching.Note));
        return fired.Length == 1 && fired[0].Time >= f.Value - 1e-15 && fired[0].Time <= f.Value + Watching.Tolerance;
    }

    private static double[] Solve<TProblem>(params double[] stops)
        where TProblem : struct, ITestProblem
    {
        var integrator = new Integrator<Tsitouras54>(Options, TProblem.Scales) { Time = TProblem.Start };
        TProblem.Exact(TProblem.Start).CopyTo(integrator.State);
        var problem = default(TProblem);
        foreach (double stop in stops)
            Assert.Equal(PhaseEnd.StopTime, integrator.Go(ref problem, stop));
        return integrator.State.ToArray();
    }

    private static bool Close(double[] a, double[] b) => a.Zip(b).All(p => Math.Abs(p.First - p.Second) <= AllowedGrowth * Tolerance);

    public sealed record Fraction(double Value);

    /// <summary>Numbers strictly between 0 and 1.</summary>
    public static class Fractions
    {
        public static Arbitrary<Fraction> Arbitrary() =>
            Gen.Choose(1, int.MaxValue - 1).Select(n => new Fraction((double)n / int.MaxValue)).ToArbitrary();
    }
}
