using System.Collections.Immutable;

namespace Staging.Core.Gaps;

/// <summary>
/// The pressure behind holes that lead outside, at the speed of the flight, and whether there is any.
/// </summary>
internal static class OutletPressure
{
    /// <summary>Pressure of the outside at a pressure coefficient [Pa].</summary>
    public static double Behind(this GapProblem problem, double coefficient) =>
        problem.Surroundings.Pressure.Pascals + coefficient * problem.DynamicPressure.Pascals;

    /// <summary>The lowest pressure coefficient of any way out of a gap [-]; zero where none is negative.</summary>
    public static double LowestCoefficient(GapDesign design) => Ways(design).Aggregate(0.0, (min, way) => Math.Min(min, way.Coefficient));

    public static void AddFindings(ImmutableArray<ModelFinding>.Builder findings, GapProblem problem)
    {
        double surroundings = problem.Surroundings.Pressure.Pascals, dynamic = problem.DynamicPressure.Pascals;
        foreach ((string path, double coefficient) in Ways(problem.Design))
        {
            double behind = problem.Behind(coefficient);
            if (!(behind > 0))
            {
                GapChecks.Add(findings, FindingSeverity.Error, "GAP030", path,
                    $"A coefficient of {coefficient:G3} at a dynamic pressure of {dynamic / 1e3:G4} kPa leaves {behind / 1e3:G4} kPa "
                        + $"behind the holes, from {surroundings / 1e3:G4} kPa; it must be above {-surroundings / dynamic:G4}.");
            }
        }
    }

    /// <summary>Every way out of a gap, with the path of its pressure coefficient and that coefficient [-].</summary>
    private static IEnumerable<(string Path, double Coefficient)> Ways(GapDesign design)
    {
        IEnumerable<(string Path, VentTarget To)> holes =
        [
            .. design.Vents.Select((v, i) => ($"Vents[{i}]", v.To)),
            .. design.Jackets.SelectMany((j, i) => j.Openings.Select((o, k) => ($"Jackets[{i}].Openings[{k}]", o.To))),
        ];
        foreach ((string path, VentTarget to) in holes)
        {
            if (to.Jacket is null)
                yield return ($"{path}.To.PressureCoefficient", to.PressureCoefficient);
        }

        if (design.Joint.RearPassages is not null)
            yield return ("Joint.RearPressureCoefficient", design.Joint.RearPressureCoefficient);
    }
}
