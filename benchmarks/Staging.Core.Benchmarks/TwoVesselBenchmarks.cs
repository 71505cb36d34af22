using BenchmarkDotNet.Attributes;
using Staging.Core.Validation;

namespace Staging.Core.Benchmarks;

/// <summary>
/// What does a gap boiled down to two stirred volumes cost, explicit and then implicit, at the accuracy of other
/// programs? A test holds its outputs to 1e-7 of an independent reference, pins its work, and sees that it allocates
/// nothing.
/// </summary>
[MemoryDiagnoser]
public class TwoVesselBenchmarks
{
    private readonly TwoVesselGap gap = TwoVesselGap.Timed();

    [Benchmark(Description = "60 ms of two volumes and a sliding stage")]
    public double Run()
    {
        gap.Run();
        return gap.Separation;
    }
}
