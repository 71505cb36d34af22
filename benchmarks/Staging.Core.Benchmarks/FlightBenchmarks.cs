using BenchmarkDotNet.Attributes;
using Staging.Core.Flight;
using Staging.Core.Solving;
using Staging.Core.Validation;

namespace Staging.Core.Benchmarks;

/// <summary>
/// What does one two-stage flight cost, lean and with everything, and what does its stepper save? 28 thrust-curve
/// pieces, rod, lag, delay, canopy, landing. The first two rows are the whole public call at an absolute and relative
/// tolerance of 1e-8 and 5e-7, the largest of the series 1, 2, 5 at which all outputs lie within 2.6e-8 of an
/// independent reference (a hand-written program for this one problem reaches that at 1e-8). A test holds them there
/// and pins their work.
/// </summary>
[MemoryDiagnoser]
public class FlightBenchmarks
{
    private readonly FlightPlan plan = FlightTwoStage.Plan();
    private readonly FlightOptions fine = FlightTwoStage.Lean(1e-8);
    private readonly FlightOptions coarse = FlightTwoStage.Lean(5e-7);
    private readonly FlightOptions everyBody = new() { Scope = FlightScope.AllBodies };
    private readonly PieceBench piece = new();

    [Benchmark(Baseline = true, Description = "upper stage to its landing, no tracks, tolerance 1e-8")]
    public FlightRun UpperStage() => plan.Fly(fine);

    [Benchmark(Description = "the same, tolerance 5e-7")]
    public FlightRun UpperStageCoarse() => plan.Fly(coarse);

    [Benchmark(Description = "every body, tracks kept")]
    public FlightRun AllBodies() => plan.Fly(everyBody);

    [Benchmark(Description = "every body and every failure case, tracks kept")]
    public FlightRun Everything() => plan.Fly();

    [Benchmark(Description = "one second of boost: the stepper of the flight")]
    public double Special() => piece.Special();

    [Benchmark(Description = "one second of boost: the general integrator")]
    public double General() => piece.General();

    /// <summary>The same second by both hands, at 1e-10: about as many steps as a whole flight has.</summary>
    private sealed class PieceBench
    {
        private const double Gravity = 9.80665, Radius = 6_356_766;
        private static readonly SolverOptions Options = new()
        {
            RelativeTolerance = 1e-10,
            ScaledAbsoluteTolerance = 1e-12,
            MaxSteps = 100_000_000
        };
        private readonly SiteColumn site = new(Gases.StandardAtmosphere.Us1976, 0, Gravity, Radius);
        private readonly BodyRecorder log = new(keepTrack: false);
        private FlightStepper special = new(Options, 100, 100);
        private Integrator<Tsitouras54> general = new(Options, [100, 100]);

        public double Special()
        {
            if (special.Statistics.AcceptedSteps > 10_000_000)
                special = new FlightStepper(Options, 100, 100);
            (special.Time, special.Height, special.Velocity) = (0, 10, 20);
            TrajectorySystem system = System();
            special.Run(ref system, 1, log, default);
            return special.Height;
        }

        public double General()
        {
            if (general.Statistics.AcceptedSteps > 10_000_000)
                general = new Integrator<Tsitouras54>(Options, [100, 100]);
            (general.Time, general.State[0], general.State[1]) = (0, 10, 20);
            TrajectorySystem system = System();
            general.Run(ref system, 1);
            return general.State[0];
        }

        private TrajectorySystem System() => new(site, new FlightSegment
        {
            Push = new Propulsion { Mass0 = 0.1, Thrust0 = 12, ThrustSlope = -2, MassFlow = 0.01 },
            Line = new DragSegment(1.2e-4, 1e-5, 0, 0.9),
            Rise = 1,
            GravityShare = 1,
            ThrustSign = 1,
        }, PhaseEvents.Rising);
    }
}
