using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>Rules across a source and the gap it feeds.</summary>
internal static class SourceChecks
{
    /// <summary>Adds the findings.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        AddProducts(findings, problem);
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

    /// <summary>
    /// A kilogram of outside gas at T0 that flows into products at T changes their pressure as (gamma - 1) gamma0 T0 -
    /// (gamma - gamma0) T (see <see cref="Zone{T}.Swelling"/>), and one of products into outside gas the other way
    /// round: where that is negative, nothing that flows keeps two volumes at one pressure. A volume is filled to at
    /// most gamma times the temperature of what comes; that a gap compresses its air before is left to the solver.
    /// </summary>
    private static void AddProducts(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        GapSource source = problem.Design.Source;
        ImmutableArray<ModelFinding> own = source.Products.Check();
        findings.AddRange(own.Select(f => f.At("Source.Products." + f.Path)));
        if (own.Any(f => f.Severity == FindingSeverity.Error))
            return;
        double gamma = source.Products.Equivalent().HeatCapacityRatio, outside = problem.Surroundings.Gas.HeatCapacityRatio;
        (double coolest, double temperature) = Temperatures(source);
        double around = problem.Surroundings.Temperature.Kelvins;
        if ((gamma - outside) * gamma * temperature > (gamma - 1) * outside * around)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP038", "Source.Products", $"The ratio of heat capacities of the products, "
                + $"particles included, is {gamma:G4}, that of the gas outside {outside:G4}: flowing into products of "
                + $"{temperature:G4} K it would lower their pressure. Hot products have the lower ratio.");
        if ((outside - gamma) * around > (outside - 1) * gamma * coolest)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP038", "Source.Products", $"The ratio of heat capacities of the products, "
                + $"particles included, is {gamma:G4}, that of the gas outside {outside:G4}: products of {coolest:G4} K would lower "
                + $"the pressure of that gas, at {around:G4} K, by flowing in. Give hotter products.");
    }

    /// <summary>Lowest and highest temperature at which products come [K].</summary>
    private static (double Low, double High) Temperatures(GapSource source)
    {
        double[] all = source.Match(
            booster => [booster.FlameTemperature.Kelvins],
            tabulated => tabulated.Temperature_K.ToArray(),
            cluster => [.. cluster.Motors.Select(m => m.FlameTemperature.Kelvins)],
            endBurner => new[] { endBurner.FlameTemperature.Kelvins });
        return (all.Min(), all.Max());
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
            GapChecks.Add(findings, FindingSeverity.Error, "GAP029", path, $"The products '{Excerpt.Of(motor.Products.Name)}' differ from "
                + $"'{Excerpt.Of(cluster.Products.Name)}' of the first motor; one gap carries one kind of products.");
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
