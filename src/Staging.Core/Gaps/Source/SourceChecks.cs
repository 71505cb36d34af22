using System.Collections.Immutable;
using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>Rules across a source and the gap it feeds.</summary>
internal static class SourceChecks
{
    /// <summary>
    /// Largest ratio of heat capacities of the products [-]: into a gas of a larger one air might flow without raising
    /// its pressure.
    /// </summary>
    private const double MaxGamma = 1.4 + 1e-9;

    /// <summary>Adds the findings.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        AddProducts(findings, problem.Design.Source.Products);
        AddStart(findings, problem.Design.Source);
        switch (problem.Design.Source)
        {
            case GapSource.Motor motor:
                AddMotor(findings, problem, motor, "Source");
                break;
            case GapSource.Cluster cluster:
                for (int i = 0; i < cluster.Motors.Length; i++)
                    AddMember(findings, problem, cluster, i, $"Source.Motors[{i}]");
                break;
        }
    }

    private static void AddProducts(ImmutableArray<ModelFinding>.Builder findings, DustyGas products)
    {
        ImmutableArray<ModelFinding> own = products.Check();
        findings.AddRange(own.Select(f => f.At("Source.Products." + f.Path)));
        if (own.Any(f => f.Severity == FindingSeverity.Error) || products.Equivalent().HeatCapacityRatio is var gamma && gamma <= MaxGamma)
            return;
        GapChecks.Add(findings, FindingSeverity.Error, "GAP038", "Source.Products", $"The ratio of heat capacities of the products, "
            + $"particles included, is {gamma:G4}; that of hot products is at most that of cold air, 1.4.");
    }

    /// <summary>
    /// Time zero is the first burn-through: a source that begins later has its delay in the wrong place.
    /// </summary>
    private static void AddStart(ImmutableArray<ModelFinding>.Builder findings, GapSource source)
    {
        (double First, string Path) start = source.Match(
            booster => (booster.Delay.Seconds, "Source.Delay"),
            _ => (0, ""),
            cluster => (cluster.Motors.Min(m => m.Delay.Seconds), "Source.Motors"),
            endBurner => (endBurner.Delay.Seconds, "Source.Delay"));
        if (start.First > 0)
            GapChecks.Add(findings, FindingSeverity.Warning, "GAP036", start.Path, $"Nothing comes for {start.First * 1e3:G4} ms: time "
                + $"zero is when the first motor burns through, and a delay belongs to those that burn through after it.");
    }

    private static void AddMember(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, GapSource.Cluster cluster, int i,
        string path)
    {
        GapSource.Motor motor = cluster.Motors[i];
        if (motor.Products != cluster.Products)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP029", path, $"The products '{motor.Products.Name}' differ from "
                + $"'{cluster.Products.Name}' of the first motor; one gap carries one kind of products.");
        else
            AddMotor(findings, problem, motor, path);
    }

    private static void AddMotor(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, GapSource.Motor of, string path)
    {
        double outside = problem.Surroundings.Pressure.Pascals, bore = problem.Design.Tube.Bore.Meters;
        if (of is GapSource.EndBurner grain)
        {
            findings.AddRange(EndBurnerChecks.Of(grain, outside, path));
            if (grain.GrainDiameter.Meters > bore)
                GapChecks.Add(findings, FindingSeverity.Note, "GAP008", $"{path}.GrainDiameter",
                    $"The grain {grain.GrainDiameter.Millimeters:G4} mm, which opens, is wider than the bore {bore * 1e3:G4} mm.");
            return;
        }

        var motor = (GapSource.Booster)of;
        double inside = motor.ChamberPressure.Pascals;
        if (inside <= outside)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP005", $"{path}.ChamberPressure",
                $"The chamber pressure {inside:G5} Pa does not exceed the outside pressure {outside:G5} Pa; no gas would come out.");
        if (motor.OpeningDiameter.Meters > bore)
            GapChecks.Add(findings, FindingSeverity.Note, "GAP008", $"{path}.OpeningDiameter",
                $"The opening {motor.OpeningDiameter.Millimeters:G4} mm is wider than the bore {bore * 1e3:G4} mm.");
    }
}
