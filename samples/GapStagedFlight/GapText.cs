using System.Globalization;
using Staging.Core.Discharge;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using static GapStagedFlight.ReviewText;

namespace GapStagedFlight;

/// <summary>Prints what a review says of one gap: vents asked and given, and the race.</summary>
internal static class GapText
{
    public static void Write(GapReview gap, TextWriter to)
    {
        GapRun run = gap.Run;
        GapDesign design = run.Problem.Design;
        Heading($"Gap from {gap.Staging.LowerStage} to {gap.Staging.UpperStage}: {design.Tube.Length.Millimeters:F0} mm long, bore {design.Tube.Bore.Millimeters:F0} mm", to);
        Row("vent area asked", Asked(gap.Advice), to);
        foreach (VentWindow w in gap.Advice.Windows)
            Row("vent area that lights", $"{w.Least.SquareMillimeters,7:F1} to {w.Greatest.SquareMillimeters:F1} mm2{(w.ReachesScanEnd ? ", the most that fits" : "")}", to);
        Row("vent area given", Given(design, gap.Advice), to);
        Row("front at the last vent", After(run, GapEventKind.FrontAtLastVent), to);
        Row("products at the nozzle", After(run, GapEventKind.ProductsAtNozzle), to);
        Row("grain lit", After(run, GapEventKind.Lit), to);
        Row("joint starts to slide", After(run, GapEventKind.JointMoves), to);
        Row("joint opens", After(run, GapEventKind.JointOpens), to);
        Row("margin, lit to open", Margin(run), to);
        Row("peak gap pressure", Push(run), to);
        Row("peak grain surface", $"{run.PeakGrainSurface.Kelvins,7:F0} K; it lights at {design.Grain.IgnitionTemperature.Kelvins:F0} K", to);
        Row("cause", "    " + run.Outcome.Cause, to);
        Row(run.Outcome.IsLit ? "what keeps the margin" : "what would help", "    " + run.Outcome.Cure, to);
    }

    private static string Asked(VentAdvice advice)
    {
        if (advice is not { Recommended: { } area, Holes: { } holes })
            return "    " + advice.Reason;
        IEnumerable<string> drills = new[] { holes.Below, holes.Above }.OfType<DrilledHoles>().DistinctBy(d => d.Drill)
            .Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.Drill.Label} ({d.AreaError:+0%;-0%;0%})"));
        return $"{area.SquareMillimeters,7:F1} mm2: {holes.Exact.Count} holes, drill {string.Join(" or ", drills)}";
    }

    private static string Given(GapDesign design, VentAdvice advice)
    {
        string holes = design.Vents.IsEmpty
            ? "closed"
            : string.Join(", ", design.Vents.Select(v => $"{v.Holes.Count} x {v.Holes.Diameter.Millimeters:F1} mm at {v.Station.Millimeters:F0} mm"));
        string against = advice.Recommended is { } asked ? $", {design.TotalVentArea / asked:F2} of what is asked" : "";
        return $"{design.TotalVentArea.SquareMillimeters,7:F1} mm2: {holes}{against}";
    }

    private static string After(GapRun run, GapEventKind kind) =>
        run.TimeOf(kind) is { } t ? $"{t.Milliseconds,7:F2} ms after burn-through" : $"    not within {run.End.Milliseconds:F0} ms";

    private static string Margin(GapRun run) => run.Outcome is GapOutcome.Lit lit
        ? lit.MarginToSeparation is { } margin ? $"{margin.Milliseconds,7:F2} ms" : "    the gap pressure alone does not open the joint"
        : "    none";

    private static string Push(GapRun run)
    {
        FrictionJoint joint = run.Problem.Design.Joint.Coupler;
        double force = run.PeakGaugePressure.Pascals * joint.PressureArea.SquareMeters;
        return $"{run.PeakGaugePressure.Kilopascals,7:F1} kPa gauge: pushes with {force:F1} N; the joint holds {joint.BreakawayForce.Newtons:F0} N";
    }
}
