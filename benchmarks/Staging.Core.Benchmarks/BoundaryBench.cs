using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Benchmarks;

/// <summary>
/// What the boundary costs: a checked model with quantities against the same arithmetic in SI doubles.
/// </summary>
[MemoryDiagnoser]
public class BoundaryBench
{
    private readonly double diameter_m = 0.004;

    [Benchmark(Baseline = true)]
    public double PlainNumbers() => 2 * Math.PI / 4 * diameter_m * diameter_m;

    [Benchmark]
    public double CheckedModel() => new VentHoles
    {
        Diameter = Length.FromMeters(diameter_m),
        WallThickness = Length.FromMillimeters(0.5),
        Count = 2,
    }.TotalArea.SquareMeters;
}
