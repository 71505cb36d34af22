using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>
/// Time and memory of one case of a study, the gap being a real one, on one thread and on two. Multiply by the number
/// of cases.
/// </summary>
[MemoryDiagnoser]
public class StudyBenchmarks
{
    private const int Cases = 256;

    private readonly ReliabilityStudy<GapProblem, GapRun> gaps = Gaps(Cases);

    private readonly ReliabilityStudy<double, double> nothing = new()
    {
        Inputs = new(0.0, new StudyInput<double>("x", "-", Distribution.Normal(0, 1), (_, v) => v)),
        Model = (x, _) => x,
        Outcome = x => x > 0 ? "above" : "below",
        Measures = [new Measure<double>("x", "-", x => x)],
        Cases = Cases,
    };

    [Benchmark(Baseline = true, OperationsPerInvoke = Cases)]
    public ReliabilityRun GapOnOneThread() => gaps.Run(new StudyOptions { Threads = 1 });

    [Benchmark(OperationsPerInvoke = Cases)]
    public ReliabilityRun GapOnTwoThreads() => gaps.Run(new StudyOptions { Threads = 2 });

    /// <summary>What the study itself costs: a case whose model does nothing.</summary>
    [Benchmark(OperationsPerInvoke = Cases)]
    public ReliabilityRun EmptyCase() => nothing.Run(new StudyOptions { Threads = 1 });

    /// <summary>The starting gap with four holes and every judged input uncertain.</summary>
    internal static ReliabilityStudy<GapProblem, GapRun> Gaps(int cases) => new()
    {
        Inputs = new(Gap(), GapInputs.Judged),
        Model = (p, stop) => p.Solve(options: SolverOptions.ForStudies, cancellationToken: stop),
        Outcome = run => run.Outcome.GetType().Name,
        Measures = [new Measure<GapRun>("lit time", "ms", run => run.TimeOf(GapEventKind.Lit)?.Milliseconds)],
        Cases = cases,
    };

    private static GapProblem Gap()
    {
        GapProblem start = StartingGaps.Bore18mm;
        var holes = new VentHoles { Diameter = Length.FromMillimeters(6), WallThickness = Length.FromMillimeters(0.5), Count = 4 };
        return start with
        {
            Design = start.Design with { Vents = [Vent.BelowNozzle(start.Design.Tube, holes, Length.FromMillimeters(1))] },
        };
    }
}
