using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>The pressure behind holes that lead outside, at the speed of the flight, and whether there is any.</summary>
internal static class OutletChecks
{
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        GapDesign design = problem.Design;
        for (int i = 0; i < design.Vents.Length; i++)
            Check(findings, problem, design.Vents[i].To, $"Vents[{i}].To.PressureCoefficient");
        for (int j = 0; j < design.Jackets.Length; j++)
        {
            for (int k = 0; k < design.Jackets[j].Openings.Length; k++)
                Check(findings, problem, design.Jackets[j].Openings[k].To, $"Jackets[{j}].Openings[{k}].To.PressureCoefficient");
        }

        if (design.Joint is StageJoint.FreeMotorTube { RearPassages: not null } tube)
            Check(findings, problem, tube.RearPressureCoefficient, "Joint.RearPressureCoefficient");
    }

    /// <summary>The lowest pressure coefficient of any way out of a gap [-]; zero where none is negative.</summary>
    public static double LowestCoefficient(GapDesign design)
    {
        double lowest = design.Joint is StageJoint.FreeMotorTube { RearPassages: not null } tube ? Math.Min(0, tube.RearPressureCoefficient) : 0;
        IEnumerable<VentTarget> targets = design.Vents.Select(v => v.To).Concat(design.Jackets.SelectMany(j => j.Openings.Select(o => o.To)));
        return targets.OfType<VentTarget.Outside>().Aggregate(lowest, (least, o) => Math.Min(least, o.PressureCoefficient));
    }

    /// <summary>Pressure of the outside at a pressure coefficient [Pa].</summary>
    public static double Behind(this GapProblem problem, double coefficient) => problem.Surroundings.Pressure.Pascals + coefficient * problem.DynamicPressure.Pascals;

    private static void Check(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, VentTarget to, string path)
    {
        if (to is VentTarget.Outside outside)
            Check(findings, problem, outside.PressureCoefficient, path);
    }

    private static void Check(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem, double coefficient, string path)
    {
        double surroundings = problem.Surroundings.Pressure.Pascals, dynamic = problem.DynamicPressure.Pascals, behind = problem.Behind(coefficient);
        if (!(behind > 0))
        {
            GapChecks.Add(findings, FindingSeverity.Error, "GAP030", path,
                $"A coefficient of {coefficient:G3} at a dynamic pressure of {dynamic / 1e3:G4} kPa leaves {behind / 1e3:G4} kPa behind the holes, from {surroundings / 1e3:G4} kPa; it must be above {-surroundings / dynamic:G4}.");
        }
    }
}
