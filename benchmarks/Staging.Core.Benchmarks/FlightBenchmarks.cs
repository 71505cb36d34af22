using BenchmarkDotNet.Attributes;
using Staging.Core.Flight;
using Staging.Core.Validation;

namespace Staging.Core.Benchmarks;

/// <summary>What does one two-stage flight cost, lean and with everything? 28 thrust-curve pieces, rod, lag, delay, canopy, landing.</summary>
[MemoryDiagnoser]
public class FlightBenchmarks
{
    private readonly FlightPlan plan = FlightTwoStage.Plan();
    private readonly FlightOptions lean = new() { Scope = FlightScope.UppermostStage, KeepTracks = false };
    private readonly FlightOptions everyBody = new() { Scope = FlightScope.AllBodies };

    [Benchmark(Baseline = true, Description = "upper stage to its landing, no tracks")]
    public FlightRun UpperStage() => plan.Fly(lean);

    [Benchmark(Description = "every body, tracks kept")]
    public FlightRun AllBodies() => plan.Fly(everyBody);

    [Benchmark(Description = "every body and every unlit branch, tracks kept")]
    public FlightRun Everything() => plan.Fly();
}
