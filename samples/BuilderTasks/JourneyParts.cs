using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace BuilderTasks;

/// <summary>The parts of the demo's review, each to be shown where the journey comes to it.</summary>
internal sealed class JourneyParts
{
    private readonly string[] parts = StagingPlan.Read("demo/plan.json").Review().ToString().Split("\n\n");

    public string Verdict => parts[0];

    public string Build => With("What to build");

    public string Flight => With("Flight");

    private string With(string heading) => parts.Single(p => p.StartsWith(heading, StringComparison.Ordinal));
}
