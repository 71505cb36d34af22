using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using Staging.Core.Sizing;
using UnitsNet;

namespace Staging.Core.Reviews;

/// <summary>
/// What a review tells the builder of one gap: holes in every wall, as advised and as drawn, and the joint.
/// </summary>
internal static class BuildText
{
    /// <summary>Two lengths that differ by less are drilled alike [m]: nobody marks a tenth of a millimetre.</summary>
    private const double Alike = 5e-5;

    public static void Write(GapReview gap, TextSheet sheet)
    {
        GapDesign design = gap.Run.Problem.Design;
        ImmutableArray<HoleTemplate> drawn = Drawn(gap), advised = gap.Advice is { } advice ? HoleTemplate.Of(advice) : [];
        sheet.Heading($"What to build, {gap.Staging.LowerStage} to {gap.Staging.UpperStage}");
        sheet.Row("station 0", Invariant.Text($"forward face of the booster motor; upper nozzle plane at "
            + $"{design.Tube.Length.Millimeters:0.0#} mm"));
        Areas(design, gap.Advice, sheet);
        foreach (string wall in drawn.Concat(advised).Select(t => t.Wall).Distinct())
            Wall(wall, [.. drawn.Where(t => t.Wall == wall)], [.. advised.Where(t => t.Wall == wall)], gap.Advice, sheet);
        if (drawn.IsEmpty)
            sheet.Row("drawn", "closed: no holes");
        Joint(design.Joint, gap, sheet);
    }

    /// <summary>The holes that the plan has, their drills named by the series of the advice first.</summary>
    public static ImmutableArray<HoleTemplate> Drawn(GapReview gap) =>
        TemplateMaker.Of(gap.Run.Problem.Design, gap.Advice?.Layout.Drills);

    private static void Areas(GapDesign design, VentAdvice? advice, TextSheet sheet)
    {
        string light = string.Join("", (advice?.Windows ?? []).Select(w => Invariant.Text(
            $"; {w.Min.SquareMillimeters:F1} to {w.Max.SquareMillimeters:F1} mm2 light")
            + (w.ReachesScanEnd ? " (the most that fits)" : "")));
        if (advice is { Recommended: { } asked })
            sheet.Row("vent area asked", asked.SquareMillimeters, "F1", "mm2", "in " + Joined(advice.Walls.Select(w => Name(w.Wall)))
                + (advice.Walls.Length > 1 ? ", each" : "") + light);
        else
            sheet.Row("vent area asked", advice?.Reason ?? "not asked: the plan has no layout of new vents");
        if (advice?.Run is { } run && run.Outcome.Lights() is not true)
            sheet.Row("  with the holes advised", run.Outcome.Lights() is null
                ? $"the run was not solved: {run.Outcome.Cause}"
                : $"it does not light: {run.Outcome.Cause} Another drill series or number of holes comes nearer to the area.");
        sheet.Row("vent area drawn", design.TotalVentArea.SquareMillimeters, "F1", "mm2",
            "in the guide tube" + Against(design.TotalVentArea, advice?.Recommended));
        foreach (Jacket jacket in design.Jackets.Where(j => !j.Openings.IsEmpty))
        {
            Area area = Area.FromSquareMeters(jacket.Openings.Sum(o => o.Holes.TotalArea.SquareMeters));
            Area? asks = advice?.Walls.Any(w => w.Wall == jacket.Name) is true ? advice.Recommended : null;
            sheet.Row("", area.SquareMillimeters, "F1", "mm2", $"out of {Name(jacket.Name)}{Against(area, asks)}");
        }
    }

    private static string Against(Area area, Area? asked) => asked is { } a ? Invariant.Text($"; {area / a:F2} of what is asked") : "";

    private static void Wall(string wall, ImmutableArray<HoleTemplate> drawn, ImmutableArray<HoleTemplate> advised, VentAdvice? advice,
        TextSheet sheet)
    {
        string tube = Joined(drawn.Concat(advised).Select(t => t.OuterDiameter).OfType<Length>()
            .Select(d => Invariant.Text($"{d.Millimeters:0.0#} mm")).Distinct());
        sheet.Row(wall, tube.Length > 0 ? $"outside diameter {tube}" : "outside diameter not stated");
        bool same = Same(drawn, advised);
        Rings(same ? "  drill, drawn as advised" : "  drill, as advised", advised, sheet);
        if (advice?.Walls.FirstOrDefault(w => w.Wall == wall) is { Drilled: { } taken, Pattern: var pattern }
            && advised.SelectMany(t => t.Rings).All(r => r.Drill == taken.Drill))
            sheet.Row("    area with that drill", Areas(taken, pattern));
        if (!same)
            Rings(advised.IsEmpty ? "  drill, as drawn" : "  as drawn", drawn, sheet);
        if (!same && Difference(drawn, advised) is { } difference)
            sheet.Row("    drawn, not advised", difference);
        foreach (ModelFinding f in (same ? drawn : drawn.Concat(advised)).SelectMany(t => t.Findings).DistinctBy(f => f.Message))
            sheet.Row(f.Severity == FindingSeverity.Note ? "    note" : "    too little wall", f.Message);
    }

    private static void Rings(string name, ImmutableArray<HoleTemplate> templates, TextSheet sheet)
    {
        foreach ((HoleTemplate template, HoleRing ring) in templates.SelectMany(t => t.Rings.Select(r => (t, r))))
            sheet.Row(name, ring.Text(ring.Station is { } station
                ? Invariant.Text($" ({(template.GapLength - station).Millimeters:0.0#} mm below the nozzle plane)")
                : ""));
    }

    private static string Areas(DrilledHoles taken, HolePattern pattern)
    {
        DrilledHoles? other = new[] { pattern.Below, pattern.Above }.OfType<DrilledHoles>().FirstOrDefault(d => d.Drill != taken.Drill);
        return Invariant.Text($"{1 + taken.AreaError:F2} of what is asked")
            + (other is null ? "" : Invariant.Text($"; drill {other.Drill.Label} would make {1 + other.AreaError:F2}"));
    }

    private static bool Same(ImmutableArray<HoleTemplate> drawn, ImmutableArray<HoleTemplate> advised)
    {
        HoleRing[] one = [.. drawn.SelectMany(t => t.Rings)], other = [.. advised.SelectMany(t => t.Rings)];
        return one.Length == other.Length && one.Zip(other).All(p => p.First.Count == p.Second.Count
            && Near(p.First.Diameter, p.Second.Diameter) && Near(p.First.Station, p.Second.Station));
    }

    /// <summary>In what the drawn holes differ from the advised ones; null where there is no advice.</summary>
    private static string? Difference(ImmutableArray<HoleTemplate> drawn, ImmutableArray<HoleTemplate> advised)
    {
        HoleRing[] ours = [.. drawn.SelectMany(t => t.Rings)], asked = [.. advised.SelectMany(t => t.Rings)];
        if (asked.Length == 0)
            return null;
        if (ours.Length == 0)
            return "nothing is drawn";
        List<string> parts = [Invariant.Text($"{Squares(ours) / Squares(asked):F2} of the advised area")];
        if (ours.Sum(r => r.Count) is var have && asked.Sum(r => r.Count) is var want && have != want)
            parts.Add(Invariant.Text($"{have} hole{(have > 1 ? "s" : "")} in place of {want}"));
        if (ours[^1].Station is { } at && asked[^1].Station is { } to && !Near(at, to))
            parts.Add(Invariant.Text($"uppermost centres {Math.Abs((at - to).Millimeters):F1} mm {(at < to ? "lower" : "higher")}"));
        return string.Join(", ", parts);
    }

    private static void Joint(StageJoint joint, GapReview gap, TextSheet sheet)
    {
        FrictionJoint coupler = joint.Coupler;
        double hold = coupler.BreakawayForce.Newtons, push = gap.Run.PeakGaugePressure.Pascals * coupler.PressureArea.SquareMeters;
        string hung = hold > 0 ? Invariant.Text($"{hold / HydrostaticProfile.StandardGravity:F2} kg hung on it; ") : "";
        sheet.Row("joint, starts to slide", hold, "F1", "N", hung + Invariant.Text(
            $"then {coupler.SlidingForce.Newtons:F1} N; the gap pushes {push:F1} N at most"));
        if (joint.Tape is { } tape)
            sheet.Row("joint, tape", tape.Strength.Newtons, "F0", "N", "more, cold, round the whole seam");
        if (joint.MovingMass is { } moving)
            sheet.Row("joint, what slides", moving.Grams, "F0", "g", "motor tube and motor, rearwards");
        if (joint.RearPassages is { } rear)
            sheet.Row("centring rings", Invariant.Text($"{rear.Count} holes of {rear.Diameter.Millimeters:F1} mm, rearwards"));
        sheet.Row("joint, engagement", coupler.Engagement.Millimeters, "F1", "mm", Invariant.Text(
            $"of travel until it opens; pressed on over {coupler.PressureDiameter.Millimeters:F1} mm diameter"));
    }

    private static double Squares(IEnumerable<HoleRing> rings) => rings.Sum(r => r.Count * r.Diameter.Meters * r.Diameter.Meters);

    private static bool Near(Length? one, Length? other) =>
        one is { } a && other is { } b ? Math.Abs(a.Meters - b.Meters) < Alike : one is null && other is null;

    private static string Name(string wall) => wall == WallHoles.GuideTube ? "the guide tube" : $"'{wall}'";

    private static string Joined(IEnumerable<string> names) => string.Join(" and ", names);
}
