using System.Collections.Immutable;
using Staging.Core.Discharge;

namespace Staging.Core.Gaps;

/// <summary>
/// No hole of a gap may be so long, in its own diameters, that the discharge law is not defined: the run would end in
/// an exception.
/// </summary>
internal static class WallChecks
{
    /// <summary>Adds an error for every set of holes whose wall is too thick.</summary>
    public static void Add(ImmutableArray<ModelFinding>.Builder findings, GapDesign design)
    {
        for (int i = 0; i < design.Vents.Length; i++)
            Check(design.Vents[i].Holes, $"Vents[{i}].Holes.WallThickness");
        for (int i = 0; i < design.Jackets.Length; i++)
        {
            for (int k = 0; k < design.Jackets[i].Openings.Length; k++)
                Check(design.Jackets[i].Openings[k].Holes, $"Jackets[{i}].Openings[{k}].Holes.WallThickness");
        }

        if (design.Joint.RearPassages is { } rear)
            Check(rear, "Joint.RearPassages.WallThickness");

        void Check(VentHoles holes, string path)
        {
            double slenderness = holes.WallThickness.Meters / holes.Diameter.Meters, limit = design.DischargeLaw.ThicknessToDiameterLimit;
            if (slenderness > limit)
                GapChecks.Add(findings, FindingSeverity.Error, "GAP012", path,
                    $"Wall over diameter is {slenderness:G3}; the discharge law is not defined beyond {limit:G3}.");
        }
    }
}
