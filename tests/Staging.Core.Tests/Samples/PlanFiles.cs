using System.Collections.Concurrent;
using Staging.Core.Plans;
using Staging.Core.Reviews;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Samples;

/// <summary>The plan files beside the demo, each reviewed once for all tests that look at its review.</summary>
internal static class PlanFiles
{
    private static readonly ConcurrentDictionary<string, Lazy<StagingReview>> Reviews = [];

    public static string Folder { get; } = Path.Combine(Repository.Root, "samples", "GapStagedFlight", "plans");

    public static StagingPlan Read(string name) => StagingPlan.Read(Path.Combine(Folder, name + ".json"));

    public static StagingReview Review(string name) => Reviews.GetOrAdd(name, n => new(() => Read(n).Review())).Value;
}
