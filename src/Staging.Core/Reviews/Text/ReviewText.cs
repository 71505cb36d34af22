using Staging.Core.Flight;

namespace Staging.Core.Reviews;

/// <summary>
/// A review as text in plain sections: the verdict, the gaps, the flight, what comes down, what to mind.
/// </summary>
internal static class ReviewText
{
    private const int CautionIndent = 4;

    public static string Of(StagingReview review, int width)
    {
        var sheet = new TextSheet(width);
        sheet.Line($"Staging review: {review.Plan.Name}");
        VerdictText.Write(review, sheet);
        foreach (GapReview gap in review.Gaps)
            GapText.Write(gap, sheet);
        Flight(review.Flight, sheet);
        DescentText.Write(review.Flight, sheet);
        Findings(review, sheet);
        Cautions(review, sheet);
        return sheet.ToString();
    }

    private static void Flight(FlightRun flight, TextSheet sheet)
    {
        sheet.Heading("Flight");
        sheet.Row("lift-off mass", flight.Plan.LiftOffMass.Grams, "F1", "g");
        if (flight.GuideExitSpeed is { } exit)
            sheet.Row("end of guide", exit.MetersPerSecond, "F1", "m/s");
        else
            sheet.Row("end of guide", "not reached");
        foreach (StagingReport s in flight.Stagings)
        {
            sheet.Row($"burn-through, {s.LowerStage}", s.State.Speed.MetersPerSecond, "F1", "m/s",
                Invariant.Text($"at {s.State.Height.Meters:F0} m, {s.State.Time.Seconds:F3} s after launch"));
            if (s is { Ignition: { } lit, Velocity: { } v, Height: { } h })
                sheet.Row($"ignition, {s.UpperStage}", v.MetersPerSecond, "F1", "m/s",
                    Invariant.Text($"at {h.Meters:F0} m, {lit.Seconds:F3} s after launch"));
            else
                sheet.Row($"ignition, {s.UpperStage}", "stays cold");
        }

        if (flight.Main.Find(FlightEventKind.MaximumSpeed) is { } fastest)
            sheet.Row("greatest speed", fastest.After.Velocity.MetersPerSecond, "F1", "m/s",
                Invariant.Text($"at {fastest.After.Height.Meters:F0} m, {fastest.Time.Seconds:F1} s"));
        if (flight.Apogee is { } apogee)
            sheet.Row("apogee", apogee.Meters, "F0", "m", Invariant.Text($"at {flight.Main.ApogeeTime!.Value.Seconds:F1} s"));
        else
            sheet.Row("apogee", "not reached");
        if (flight.Main.Find(FlightEventKind.Ejection) is { } ejection)
            sheet.Row("ejection", ejection.Before.Velocity.MetersPerSecond, "F1", "m/s",
                Invariant.Text($"at {ejection.Before.Height.Meters:F0} m, {ejection.Time.Seconds:F1} s"));
    }

    private static void Findings(StagingReview review, TextSheet sheet)
    {
        if (review.Findings.IsEmpty)
            return;
        sheet.Heading("Findings about the model (! marks one that casts doubt on the numbers above)");
        foreach (ModelFinding f in review.Findings.OrderByDescending(f => f.Severity))
            sheet.Wrapped(f.Severity == FindingSeverity.Note ? "  " : "! ", f.ToString(), CautionIndent);
    }

    private static void Cautions(StagingReview review, TextSheet sheet)
    {
        sheet.Heading("Cautions (! marks a rule that the plan stands outside of)");
        foreach (Caution c in review.Cautions.OrderByDescending(c => c.OutsideRule))
            sheet.Wrapped(c.OutsideRule ? "! " : "  ", $"{c.Subject}: {c.Text}", CautionIndent);
    }
}
