using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gases;

namespace Staging.Core.Plans;

/// <summary>Rules across a staging plan.</summary>
internal static class PlanChecks
{
    public static ImmutableArray<ModelFinding> Of(StagingPlan plan)
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        findings.AddRange(plan.Flight.Check().Select(f => f with { Path = "Flight." + f.Path }));
        AirSample air = plan.Flight.Site.Atmosphere.At(plan.Flight.Site.Elevation.Meters);
        ImmutableArray<Stage> stages = plan.Flight.Stages.Items;
        for (int i = 1; i < stages.Length; i++)
        {
            if (stages[i].Gap() is { } gap)
                findings.AddRange(gap.OnGround(stages[i - 1], stages[i..], air).Check()
                    .Select(f => f with { Path = $"Flight.Stages[{i}].Ignition.Gap.{Short(f.Path)}" }));
        }

        return findings.ToImmutable();
    }

    private static string Short(string path) => path.StartsWith("Design.", StringComparison.Ordinal) ? path["Design.".Length..] : path;
}
