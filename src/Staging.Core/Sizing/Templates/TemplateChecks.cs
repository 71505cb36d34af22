using System.Collections.Immutable;
using Staging.Core.Gaps;

namespace Staging.Core.Sizing;

/// <summary>Whether a wall can be marked, and whether enough of it is left between the holes.</summary>
internal static class TemplateChecks
{
    /// <summary>
    /// Least wall between two holes, as a share of the hole [-] and in metres: a judgement, the same as a ring that
    /// takes four fifths of the circumference, and the land that a layout leaves above the holes.
    /// </summary>
    private const double LeastShare = 0.25, LeastLand = 1e-3;

    /// <summary>The findings of a wall.</summary>
    public static ImmutableArray<ModelFinding> Of(HoleTemplate template)
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        for (int i = 0; i < template.Rings.Length; i++)
            Add(findings, template, template.Rings[i], $"{template.Wall}.Rings[{i}]");
        return findings.ToImmutable();
    }

    private static void Add(ImmutableArray<ModelFinding>.Builder findings, HoleTemplate template, HoleRing ring, string path)
    {
        if (ring.Land is not { } land)
        {
            GapChecks.Add(findings, FindingSeverity.Note, "SIZ012", path,
                $"Where {ring.Count} holes of '{Excerpt.Of(template.Wall)}' are is not stated: holes through its outer "
                    + $"wall need its OuterBore and their Station, holes through a ring have none.");
            return;
        }

        double diameter = ring.Diameter.Meters, least = Math.Max(LeastLand, LeastShare * diameter);
        if (land.Meters <= 0 || diameter >= template.OuterDiameter!.Value.Meters)
            GapChecks.Add(findings, FindingSeverity.Error, "SIZ010", path, $"The {Holes(ring)} at station "
                + $"{ring.Station!.Value.Millimeters:F1} mm of '{Excerpt.Of(template.Wall)}' leave no wall between them on a tube of "
                + $"{template.OuterDiameter!.Value.Millimeters:F1} mm: that is a side cut open, not holes to drill.");
        else if (land.Meters < least * (1 - 1e-9))
            GapChecks.Add(findings, FindingSeverity.Warning, "SIZ011", path, $"The {Holes(ring)} at station "
                + $"{ring.Station!.Value.Millimeters:F1} mm of '{Excerpt.Of(template.Wall)}' leave {land.Millimeters:F1} mm of wall; "
                + $"at least {least * 1e3:F1} mm should stand, the more of a quarter of the hole and 1 mm.");
    }

    private static string Holes(HoleRing ring) =>
        Invariant.Text($"{ring.Count} hole{(ring.Count > 1 ? "s" : "")} of {ring.Diameter.Millimeters:F1} mm");
}
