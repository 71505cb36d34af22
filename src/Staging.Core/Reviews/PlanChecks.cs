using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Reviews;

/// <summary>Rules across a staging plan.</summary>
internal static class PlanChecks
{
    public static ImmutableArray<ModelFinding> Of(StagingPlan plan)
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        findings.AddRange(plan.Flight.Check().Select(f => f with { Path = "Flight." + f.Path }));
        AirSample air = plan.Flight.Site.Atmosphere.At(plan.Flight.Site.Elevation.Meters);
        ImmutableArray<Stage> stages = plan.Flight.Stages;
        for (int i = 1; i < stages.Length; i++)
        {
            if (stages[i].Ignition is StageIgnition.ByGap { Gap: GapIgnition gap })
                findings.AddRange(OnGround(gap, stages[i - 1], stages[i..], air).Check().Select(f => f with { Path = $"Flight.Stages[{i}].Ignition.Gap.{Short(f.Path)}" }));
        }

        return findings.ToImmutable();
    }

    /// <summary>The gap at rest on the ground, to check what does not depend on the flight.</summary>
    private static GapProblem OnGround(GapIgnition gap, Stage below, ImmutableArray<Stage> ahead, AirSample air) => gap.ProblemAt(new BurnThroughState
    {
        LowerStage = below.Name,
        UpperStage = ahead[0].Name,
        Time = Duration.Zero,
        Height = Length.Zero,
        Speed = Speed.Zero,
        MachNumber = 0,
        AirPressure = Pressure.FromPascals(air.Pressure_Pa),
        AirTemperature = Temperature.FromKelvins(air.Temperature_K),
        AirDensity = Density.FromKilogramsPerCubicMeter(air.Density_kg_per_m3),
        MassAhead = Mass.FromKilograms(ahead.Sum(s => s.LoadedMass.Kilograms)),
        MassBehind = below.BurntMass,
        DragAhead = Force.Zero,
        DragBehind = Force.Zero,
        ThrustBehind = Force.Zero,
    });

    private static string Short(string path) => path.StartsWith("Design.", StringComparison.Ordinal) ? path["Design.".Length..] : path;
}
