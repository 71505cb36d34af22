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
        findings.AddRange(plan.Flight.Check().Select(f => f.At("Flight." + f.Path)));
        ImmutableArray<Stage> stages = plan.Flight.Stages.Items;
        for (int i = 1; i < stages.Length; i++)
        {
            if (stages[i].Gap() is { } gap)
                AddGap(findings, plan.Flight, i, gap, $"Flight.Stages[{i}].Ignition.Gap");
        }

        return findings.ToImmutable();
    }

    /// <summary>
    /// Adds what there is to say about a gap in the air of the site. Air or bodies that no gap may have are a finding
    /// as well: they come from several places of the plan, so no property could refuse them.
    /// </summary>
    private static void AddGap(ImmutableArray<ModelFinding>.Builder findings, FlightPlan flight, int upper, GapIgnition gap, string path)
    {
        try
        {
            AirSample air = AirAt(flight.Site);
            findings.AddRange(gap.OnGround(flight, upper, air).Check().Select(f => f.At($"{path}.Design.{f.Path}")));
            AddLayout(findings, gap, path);
            findings.AddRange(MotorConsistency.Of(flight.Stages[upper - 1], gap.Design.Source, air.Pressure_Pa, $"{path}.Design.Source"));
        }
        catch (ArgumentException refusal)
        {
            findings.Add(new ModelFinding(FindingSeverity.Error, "PLN001", path, Guard.MessageOf(refusal)));
        }
    }

    /// <summary>
    /// New vents that cannot be drilled as the layout has it: a warning, for the gap as built flies all the same.
    /// </summary>
    private static void AddLayout(ImmutableArray<ModelFinding>.Builder findings, GapIgnition gap, string path)
    {
        foreach (ModelFinding finding in gap.Layout?.Check(gap.Design) ?? [])
        {
            bool isOfLayout = finding.Path.StartsWith(nameof(GapIgnition.Layout), StringComparison.Ordinal);
            string where = isOfLayout ? $"{path}.{finding.Path}" : $"{path}.Design.{finding.Path}";
            findings.Add(new ModelFinding(FindingSeverity.Warning, finding.Code, where, finding.Message));
        }
    }

    /// <summary>
    /// The air at the site; where the site lies outside its atmosphere, which the flight reports, the air at that end.
    /// </summary>
    private static AirSample AirAt(LaunchSite site)
    {
        IAtmosphere air = site.Atmosphere;
        return air.At(Math.Min(Math.Max(site.Elevation.Meters, air.Floor_m), air.Ceiling_m));
    }
}
