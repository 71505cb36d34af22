using BenchmarkDotNet.Attributes;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;

namespace Staging.Core.Benchmarks;

/// <summary>
/// What does one cell cost a step, in lanes and alone, with one gas and with two, and how does it grow with the number
/// of cells? Shock tube of G. Sod (1978) to t = 0.2 at Courant number 0.8. Divide by the cell-steps of the run: 549
/// steps of 1000 cells with one gamma.
/// </summary>
[MemoryDiagnoser]
public class ResolvedBenchmarks
{
    private static readonly GasConstants Air = new(287.05287, 1.4);
    private readonly ShockTubeRun eightLanes = new(8, twoGases: false);
    private readonly ShockTubeRun fourLanes = new(4, twoGases: false);
    private readonly ShockTubeRun oneLane = new(1, twoGases: false);
    private readonly ShockTubeRun twoGases = new(0, twoGases: true);
    private readonly TubeFlow longTube = new(100_000, 1e-5, Air, Air) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly GapProblem gap = GapBenchmarks.MakeGap();

    [Benchmark(Baseline = true, Description = "549 steps of 1000 cells, one gamma, eight lanes")]
    public double EightLanes() => eightLanes.Run();

    [Benchmark(Description = "the same, four lanes")]
    public double FourLanes() => fourLanes.Run();

    [Benchmark(Description = "the same, one lane")]
    public double OneLane() => oneLane.Run();

    [Benchmark(Description = "562 steps of 1000 cells, two gases")]
    public double TwoGases() => twoGases.Run();

    [Benchmark(Description = "10 steps of 100000 cells, one gamma")]
    public double LongTube()
    {
        ShockTubeRun.Fill(longTube);
        for (int s = 0; s < 10; s++)
            longTube.Step(longTube.LongestStep(0.8));
        return longTube.Extremes.Fastest;
    }

    [Benchmark(Description = "whole gap run, 100 cells, problem in, result out")]
    public GapRun WholeGap() => gap.Solve(new GapModel.OneDimensional { Cells = 100 });
}
