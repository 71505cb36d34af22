using BenchmarkDotNet.Attributes;
using Staging.Core.Flight;
using Staging.Core.Validation;

namespace Staging.Core.Benchmarks;

/// <summary>How does the cost of a flight grow with the stages of the stack?</summary>
public class StageGrowthBenchmarks
{
    private FlightPlan plan = FlightTwoStage.Plan();

    [Params(2, 4, 8)]
    public int Stages { get; set; }

    /// <summary>Boosters of one kind, one on another, and the upper stage on top of them.</summary>
    [GlobalSetup]
    public void Stack()
    {
        FlightPlan two = FlightTwoStage.Plan();
        Stage booster = two.Stages[0], upper = two.Stages[1];
        plan = two with
        {
            Stages =
            [
                booster,
                .. Enumerable.Range(2, Stages - 2).Select(i => booster with { Name = $"booster {i}", Ignition = upper.Ignition }),
                upper,
            ],
        };
    }

    [Benchmark]
    public FlightRun EveryBody() => plan.Fly(new() { Scope = FlightScope.AllBodies, KeepTracks = false });
}
