using System.Text.Json;
using Staging.Core.Gaps;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

/// <summary>What to build, as JSON: the walls with their holes, as drawn and as advised, and the joint.</summary>
internal static class BuildJson
{
    /// <summary>Writes the object <c>build</c> of a gap.</summary>
    public static void Write(Utf8JsonWriter w, GapReview gap)
    {
        GapDesign design = gap.Run.Problem.Design;
        w.WriteStartObject("build");
        w.WriteString("station0", "forward face of the booster motor");
        ReviewJson.Number(w, "upperNozzlePlane_m", design.Tube.Length.Meters);
        w.WriteStartArray("ventAreaAskedIn");
        foreach (WallHoles wall in gap.Advice?.Walls ?? [])
            w.WriteStringValue(wall.Wall);
        w.WriteEndArray();
        w.WriteString("advisedOutcome",
            gap.Advice?.Run is { } run ? JsonNamingPolicy.CamelCase.ConvertName(run.Outcome.GetType().Name) : null);
        ReviewJson.List(w, "advised", gap.Advice is { } advice ? HoleTemplate.Of(advice) : [], WriteWall);
        ReviewJson.List(w, "drawn", BuildText.Drawn(gap), WriteWall);
        w.WriteStartObject("joint");
        FrictionJoint coupler = design.Joint.Coupler;
        ReviewJson.Number(w, "breakawayForce_N", coupler.BreakawayForce.Newtons);
        ReviewJson.Number(w, "slidingForce_N", coupler.SlidingForce.Newtons);
        ReviewJson.Number(w, "tapeStrength_N", design.Joint.Tape?.Strength.Newtons);
        ReviewJson.Number(w, "engagement_m", coupler.Engagement.Meters);
        ReviewJson.Number(w, "pressureDiameter_m", coupler.PressureDiameter.Meters);
        ReviewJson.Number(w, "peakPush_N", gap.Run.PeakGaugePressure.Pascals * coupler.PressureArea.SquareMeters);
        w.WriteEndObject();
        w.WriteEndObject();
    }

    private static void WriteWall(Utf8JsonWriter w, HoleTemplate template)
    {
        w.WriteString("wall", template.Wall);
        ReviewJson.Number(w, "bore_m", template.Bore?.Meters);
        ReviewJson.Number(w, "outerDiameter_m", template.OuterDiameter?.Meters);
        ReviewJson.List(w, "rings", template.Rings, (w, ring) =>
        {
            ReviewJson.Number(w, "station_m", ring.Station?.Meters);
            ReviewJson.Number(w, "belowUpperNozzle_m", (template.GapLength - ring.Station)?.Meters);
            w.WriteNumber("holes", ring.Count);
            ReviewJson.Number(w, "holeDiameter_m", ring.Diameter.Meters);
            w.WriteString("drill", ring.Drill?.Label);
            ReviewJson.Number(w, "angleBetween_deg", ring.AngleBetween.Degrees);
            ReviewJson.Number(w, "pitch_m", ring.Pitch?.Meters);
            ReviewJson.Number(w, "land_m", ring.Land?.Meters);
            Column(w, "angles_deg", ring.Angles.Select(a => a.Degrees));
            Column(w, "arcs_m", ring.Arcs.Select(a => a.Meters));
        });
        ReviewJson.List(w, "findings", template.Findings, ReviewJson.WriteFinding);
    }

    private static void Column(Utf8JsonWriter w, string key, IEnumerable<double> numbers)
    {
        w.WriteStartArray(key);
        foreach (double number in numbers)
            w.WriteNumberValue(number);
        w.WriteEndArray();
    }
}
