using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>How does the cost of a gap run grow with the vents along its tube?</summary>
public class VentGrowthBenchmarks
{
    private GapProblem gap = StartingGaps.Bore18mm;

    [Params(1, 4, 16, 64)]
    public int Vents { get; set; }

    /// <summary>The same 60 mm2 in holes of one size, spread over the last two fifths of the tube.</summary>
    [GlobalSetup]
    public void Spread()
    {
        GapProblem start = StartingGaps.Bore18mm;
        var hole = new VentHoles
        {
            Diameter = Length.FromMillimeters(Math.Sqrt(4 * 60 / Math.PI / Vents)),
            WallThickness = Length.FromMillimeters(0.5),
            Count = 1,
        };
        Length tube = start.Design.Tube.Length;
        Vent[] vents =
        [
            .. Enumerable.Range(0, Vents).Select(i => new Vent
            {
                Holes = hole,
                Station = tube * (1 - 0.4 * i / Vents) - Length.FromMillimeters(5),
                To = VentTarget.Air,
            }),
        ];
        gap = start with { Design = start.Design with { Vents = [.. vents] } };
    }

    [Benchmark]
    public GapRun Run() => gap.Solve(options: SolverOptions.ForStudies);
}
