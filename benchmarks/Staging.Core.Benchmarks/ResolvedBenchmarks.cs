using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Gases;
using UnitsNet;

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
    private static readonly GasConstants Products = new(240, 1.25);
    private readonly TubeFlow eightLanes = new(1000, 1e-3, Air, Air, lanes: 8) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly TubeFlow fourLanes = new(1000, 1e-3, Air, Air, lanes: 4) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly TubeFlow oneLane = new(1000, 1e-3, Air, Air, lanes: 1) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly TubeFlow twoGases = new(1000, 1e-3, Products, Air) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly TubeFlow longTube = new(100_000, 1e-5, Air, Air) { Left = new OpenEnd(), Right = new OpenEnd() };
    private readonly GapProblem gap = MakeGap();

    [Benchmark(Baseline = true, Description = "549 steps of 1000 cells, one gamma, eight lanes")]
    public double EightLanes() => Run(eightLanes);

    [Benchmark(Description = "the same, four lanes")]
    public double FourLanes() => Run(fourLanes);

    [Benchmark(Description = "the same, one lane")]
    public double OneLane() => Run(oneLane);

    [Benchmark(Description = "562 steps of 1000 cells, two gases")]
    public double TwoGases() => Run(twoGases);

    [Benchmark(Description = "10 steps of 100000 cells, one gamma")]
    public double LongTube()
    {
        Fill(longTube);
        for (int s = 0; s < 10; s++)
            longTube.Step(longTube.LongestStep(0.8));
        return longTube.Extremes.Fastest;
    }

    [Benchmark(Description = "whole gap run, 100 cells, problem in, result out")]
    public GapRun WholeGap() => gap.Solve(new GapModel.OneDimensional { Cells = 100 });

    private static double Run(TubeFlow tube)
    {
        const double End = 0.2;
        Fill(tube);
        double t = 0;
        while (t < End)
        {
            double dt = tube.LongestStep(0.8);
            if (t + dt >= End)
            {
                tube.Step(End - t);
                break;
            }

            t += tube.Step(dt);
        }

        return tube.Extremes.Fastest;
    }

    private static void Fill(TubeFlow tube)
    {
        int n = tube.Cells.Count;
        for (int i = 0; i < n; i++)
        {
            bool left = 2 * i + 1 < n;
            tube.Fill(i, left ? 1 : 0.125, 0, left ? 1 : 0.1, left ? 1 : 0);
        }

        tube.Look();
    }

    private static GapProblem MakeGap()
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
