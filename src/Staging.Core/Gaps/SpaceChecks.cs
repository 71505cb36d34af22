using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>A space behind holes has some depth: its volume over their area.</summary>
/// <remarks>
/// A space of 0.1 mm settles within a microsecond, whatever it is filled with; a thinner one, which nobody builds,
/// would only cost steps.
/// </remarks>
internal static class SpaceChecks
{
    /// <summary>Least volume over the area of all holes that lead in or out [m].</summary>
    private const double LeastDepth = 1e-4;

    /// <summary>Least volume of the dead end over its cross-section [m]: the stream passes by.</summary>
    private const double LeastDeadEnd = 1e-6;

    /// <summary>Adds the findings on chambers, dead end and jackets.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        switch (design.Source)
        {
            case GapSource.Motor motor:
                AddMotor(findings, motor, "Source");
                break;
            case GapSource.Cluster cluster:
                for (int i = 0; i < cluster.Motors.Length; i++)
                    AddMotor(findings, cluster.Motors[i], $"Source.Motors[{i}]");
                break;
        }

        AddDeadEnd(findings, design);
        for (int i = 0; i < design.Jackets.Length; i++)
            AddSpace(findings, design.Jackets[i].Volume.CubicMeters, AreaOf(design, design.Jackets[i]), $"Jackets[{i}].Volume", "jacket");
    }

    private static void AddMotor(ImmutableArray<ModelFinding>.Builder findings, GapSource.Motor of, string path)
    {
        double throat = Disc(of.NozzleThroatDiameter.Meters);
        if (of is GapSource.Booster motor)
            AddSpace(findings, motor.ChamberVolume.CubicMeters, throat + Disc(motor.OpeningDiameter.Meters),
                $"{path}.ChamberVolume", "chamber");
        else if (of is GapSource.EndBurner grain)
            AddSpace(findings, ChamberBalance.Volume(grain.BurntLength.Meters, 0.5 * grain.GrainDiameter.Meters), throat,
                $"{path}.BurntLength", "chamber");
    }

    /// <summary>The dead end: what lies beyond the uppermost holes, and the recess of the grain.</summary>
    private static void AddDeadEnd(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        BoreProfile profile = design.Tube.Profile;
        double length = design.Tube.Length.Meters, from = Math.Min(VentReach.Last(design.Vents.Items)?.Ends() ?? length, length);
        double volume = profile.VolumeTo(length) - profile.VolumeTo(from) + design.Grain.RecessVolume.CubicMeters;
        double area = profile.AreaBelow(length);
        if (volume < LeastDeadEnd * area)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP037", "Grain.RecessVolume", $"Beyond the uppermost holes there are "
                + $"{volume * 1e9:G3} mm3 in a bore of {area * 1e6:G3} mm2, less than a micrometre: no gas would stand before the grain.");
    }

    /// <summary>Area of all holes of a jacket, those that lead into it included [m2].</summary>
    private static double AreaOf(GapDesign design, Jacket jacket) =>
        design.Vents.Where(v => v.To.Jacket == jacket.Name).Sum(v => v.Holes.TotalArea.SquareMeters)
            + design.Jackets.Sum(j => j.Openings.Where(o => j == jacket || o.To.Jacket == jacket.Name)
                .Sum(o => o.Holes.TotalArea.SquareMeters));

    private static void AddSpace(ImmutableArray<ModelFinding>.Builder findings, double volume, double area, string path, string space)
    {
        if (volume < LeastDepth * area)
            GapChecks.Add(findings, FindingSeverity.Error, "GAP037", path, $"A {space} of {volume * 1e9:G3} mm3 behind holes of "
                + $"{area * 1e6:G3} mm2 is {volume / area * 1e6:G3} micrometres deep; less than {LeastDepth * 1e6:G3} is no space.");
    }

    private static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;
}
