using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>
/// What does one gap run cost, and does a step allocate? An invented gap of 250 mm; twice the steps must cost no more
/// memory.
/// </summary>
[MemoryDiagnoser]
public class GapBenchmarks
{
    private readonly GapProblem gap = MakeGap();
    private readonly GapParameters parameters = GapToSi.ToSi(MakeGap());
    private double[] state = [];
    private double[] slope = [];
    private Marcher coarse = null!;
    private Marcher fine = null!;

    [GlobalSetup]
    public void Prepare()
    {
        state = new double[parameters.StateCount];
        slope = new double[parameters.StateCount];
        GapToSi.FirstState(parameters, state);
        coarse = new Marcher(parameters, 1e-6);
        fine = new Marcher(parameters, 1e-9);
    }

    [Benchmark(Baseline = true, Description = "whole run, problem in, result out")]
    public GapRun WholeRun() => gap.Solve();

    [Benchmark(Description = "right-hand side")]
    public double RightHandSide()
    {
        new GapSystem(parameters, new GapPhase(JointPhase.Slides, 0, 1, -1)).Derivative(1e-3, state, slope);
        return slope[0];
    }

    [Benchmark(Description = "steps alone, tolerance 1e-6")]
    public double CoarseSteps() => coarse.March(state);

    [Benchmark(Description = "steps alone, tolerance 1e-9")]
    public double FineSteps() => fine.March(state);

    /// <summary>
    /// The first 5 ms with one integrator: what is allocated here is allocated by steps. A new integrator only when the
    /// allowance of steps, which counts all runs, is nearly used up.
    /// </summary>
    private sealed class Marcher(GapParameters parameters, double tolerance)
    {
        private const int Allowed = 100_000_000;
        private readonly SolverOptions options = new() { RelativeTolerance = tolerance, MaxSteps = Allowed };
        private Integrator<Tsitouras54>? integrator;

        public double March(double[] start)
        {
            if (integrator is null || integrator.Statistics.AcceptedSteps > Allowed / 2)
                integrator = new Integrator<Tsitouras54>(options, GapToSi.Scales(parameters));
            integrator.Time = 0;
            start.CopyTo(integrator.State);
            var system = new GapSystem(parameters, new GapPhase(JointPhase.Held, 0, 1, -1));
            if (integrator.Run(ref system, 5e-3) == PhaseEnd.Failed)
                throw new InvalidOperationException(integrator.Failure?.ToString());
            return integrator.State[0];
        }
    }

    internal static GapProblem MakeGap()
    {
        GapProblem start = StartingGaps.Bore18mm;
        GuideTube tube = start.Design.Tube with { Length = Length.FromMillimeters(250) };
        var holes = new VentHoles { Diameter = Length.FromMillimeters(5), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        FrictionJoint joint = start.Design.Joint.Coupler with
        {
            BreakawayForce = Force.FromNewtons(40),
            SlidingForce = Force.FromNewtons(32)
        };
        return start with
        {
            Design = start.Design with { Tube = tube, Vents = [Vent.BelowNozzle(tube, holes, Length.FromMillimeters(1))], Joint = joint },
        };
    }
}
