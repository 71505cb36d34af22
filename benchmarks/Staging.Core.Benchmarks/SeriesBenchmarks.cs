using BenchmarkDotNet.Attributes;
using Staging.Core.Discharge;
using Staging.Core.Gases;

namespace Staging.Core.Benchmarks;

/// <summary>
/// Cost of one flow through holes one behind the other, all sharp-edged, the pressures between them solved for. Nothing
/// may be allocated.
/// </summary>
[MemoryDiagnoser]
[IterationTime(100), MaxIterationCount(20), MaxWarmupCount(10)]
public class SeriesBenchmarks
{
    private const double EndPressure = 1.6e5;

    private readonly OrificeSide upstream = new(2e5, 300, new GasConstants(287, 1.4));
    private readonly SeriesMember[] members =
        [.. Enumerable.Repeat(new SeriesMember(SharpEdgedLaw.Perry, new OrificeSize(2e-5, 5e-3, 5e-4)), 4)];
    private readonly double[] between = new double[3];

    [Benchmark(Baseline = true, Description = "one hole")]
    public double One() => SeriesKernel.MassFlow(members.AsSpan(0, 1), upstream, EndPressure, []);

    [Benchmark(Description = "two holes in series")]
    public double Two() => SeriesKernel.MassFlow(members.AsSpan(0, 2), upstream, EndPressure, between.AsSpan(0, 1));

    [Benchmark(Description = "four holes in series")]
    public double Four() => SeriesKernel.MassFlow(members, upstream, EndPressure, between);
}
