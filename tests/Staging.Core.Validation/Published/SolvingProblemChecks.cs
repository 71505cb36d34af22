using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Validation.Published;

/// <summary>Problems whose numbers the literature of integration carries to many digits.</summary>
public class SolvingProblemChecks
{
    private static readonly Provenance Arenstorf = new()
    {
        Source = "E. Hairer, S. P. Norsett, G. Wanner, Solving Ordinary Differential Equations I (1993)",
        Locator = "section II.0, initial values and period; recalled, and seen in several public test collections",
        How = Evidence.FromMemory,
    };

    private static readonly Provenance VanDerPol = new()
    {
        Source = "F. Mazzia, C. Magherini, Test Set for Initial Value Problem Solvers, problem VDPOL",
        Locator = "reference solution at t = 2, seen in the distributed program of the problem",
        How = Evidence.SeenInSource,
    };

    private static readonly Provenance Robertson = new()
    {
        Source = "E. Hairer, G. Wanner, Solving Ordinary Differential Equations II (1996), Robertson's reactions",
        Locator = "section IV.1, t = 40; seen as quoted in public test collections that cite it",
        How = Evidence.FromMemory,
    };

    [Fact]
    public void The_Arenstorf_orbit_closes()
    {
        var options = SolverOptions.Default with { RelativeTolerance = 1e-12, ScaledAbsoluteTolerance = 1e-12 };
        var integrator = new Integrator<Tsitouras54>(options, [1, 1, 1, 1]);
        ArenstorfOrbit.Start.CopyTo(integrator.State);
        var orbit = default(ArenstorfOrbit);
        integrator.Run(ref orbit, ArenstorfOrbit.Period, null, TestContext.Current.CancellationToken);
        // The orbit passes the smaller body at 0.006: errors grow by four orders of magnitude over one period.
        Tolerance within = Tolerance.FixedAmount(1e-7, "tolerance 1e-12 times the growth of errors over the orbit, 1e4 to 1e5");
        SolvingCheck.Verify("Arenstorf orbit after one period, x", "-", 0.994, integrator.State[0], within, Arenstorf);
        SolvingCheck.Verify("Arenstorf orbit after one period, y", "-", 0, integrator.State[1], within, Arenstorf);
    }

    [Fact]
    public void The_stiff_van_der_Pol_oscillator_arrives()
    {
        var options = SolverOptions.Default with { RelativeTolerance = 1e-8, ScaledAbsoluteTolerance = 1e-8 };
        var integrator = new Integrator<Rodas43>(options, [1, 1]);
        integrator.State[0] = 2;
        var oscillator = default(VanDerPolOscillator);
        integrator.Run(ref oscillator, 2, null, TestContext.Current.CancellationToken);
        Tolerance within = Tolerance.FixedAmount(1e-8, "tolerance of the run");
        SolvingCheck.Verify("Van der Pol, 1e-6, y1(2)", "-", 1.706167732170483, integrator.State[0], within, VanDerPol);
        SolvingCheck.Verify("Van der Pol, 1e-6, y2(2)", "-", -0.8928097010247975, integrator.State[1], within, VanDerPol);
    }

    [Fact]
    public void Robertson_reactions_at_forty_seconds()
    {
        var options = SolverOptions.Default with { RelativeTolerance = 1e-8, LongestStep = Duration.FromMinutes(10) };
        var integrator = new Integrator<Rodas43>(options, [1, 1e-5, 1]);
        integrator.State[0] = 1;
        var reactions = default(RobertsonReactions);
        integrator.Run(ref reactions, 40, null, TestContext.Current.CancellationToken);
        Tolerance within = Tolerance.Relative(1e-8, "tolerance of the run");
        SolvingCheck.Verify("Robertson, y1(40 s)", "-", 0.7158270687, integrator.State[0], within, Robertson);
        SolvingCheck.Verify("Robertson, y2(40 s)", "-", 9.185534765e-6, integrator.State[1], within, Robertson);
        SolvingCheck.Verify("Robertson, y3(40 s)", "-", 0.2841637457, integrator.State[2], within, Robertson);
    }
}
