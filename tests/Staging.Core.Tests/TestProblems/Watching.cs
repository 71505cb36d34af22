using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Tests.TestProblems;

/// <summary>Short forms for tests that watch functions of time on equal steps.</summary>
internal static class Watching
{
    public static readonly EventRule Note = new(Crossing.Either, EndsPhase: false);

    public static readonly EventRule End = new(Crossing.Either, EndsPhase: true);

    /// <summary>Event tolerance of these tests [s].</summary>
    public const double Tolerance = 1e-9;

    /// <summary>An integrator of one state from zero, with equal steps and parts.</summary>
    public static Integrator<Tsitouras54> Steps(double step, int parts = 4) =>
        new(SolverOptions.Default with { EventScanParts = parts, EventTimeTolerance = Duration.FromSeconds(Tolerance) }, [1.0]) { FixedStep = step };

    /// <summary>The events of one phase from zero to a stop time.</summary>
    public static FiredEvent[] Events(double step, int parts, double stop, params (Func<double, double> Function, EventRule Rule)[] watched)
    {
        var system = new TimeFunctions(watched);
        Integrator<Tsitouras54> integrator = Steps(step, parts);
        Assert.NotEqual(PhaseEnd.Failed, integrator.Go(ref system, stop));
        return integrator.Fired.ToArray();
    }
}
