using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Rules across a source and the gap it feeds.</summary>
internal static class SourceChecks
{
    /// <summary>Adds what there is to say.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem) =>
        AddOne(findings, problem, problem.Design.Source, "Source");

    private static void AddOne(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, GapSource source, string path)
    {
        switch (source)
        {
            case GapSource.Afterburn x:
                AddChamber(findings, problem, x.Motor.Chamber, path, "Chamber");
                break;
            case GapSource.Fragments x:
                AddChamber(findings, problem, x.Chamber, path + ".Chamber", "");
                break;
            case GapSource.Cluster cluster:
                for (int i = 0; i < cluster.Motors.Length; i++)
                    AddMotor(findings, problem, cluster, i, $"{path}.Motors[{i}].Source");
                break;
        }
    }

    private static void AddMotor(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, GapSource.Cluster cluster, int i,
        string path)
    {
        GapSource source = cluster.Motors[i].Source;
        if (source is GapSource.Cluster or GapSource.Tabulated)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP028", path,
                $"A member of a cluster must be one motor; a cluster or a table cannot be one.");
        else if (source.Products != cluster.Products)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP029", path, $"The products '{source.Products.Name}' differ from "
                + $"'{cluster.Products.Name}' of the first motor; one gap carries one kind of products.");
        else
            AddOne(findings, problem, source, path);
    }

    private static void AddChamber(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, BoosterChamber chamber, string path,
        string prefix)
    {
        double inside = chamber.Pressure.Pascals, outside = problem.Surroundings.Pressure.Pascals;
        if (inside <= outside)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP005", $"{path}.{prefix}Pressure",
                $"The chamber pressure {inside:G5} Pa does not exceed the outside pressure {outside:G5} Pa; no gas would come out.");
        double bore = problem.Design.Tube.Bore.Meters;
        if (chamber.OpeningDiameter.Meters > bore)
            GapChecks.Add(findings, FindingSeverity.Note, "GAP008", $"{path}.OpeningDiameter",
                $"The opening {chamber.OpeningDiameter.Millimeters:G4} mm is wider than the bore {bore * 1e3:G4} mm.");
    }
}
