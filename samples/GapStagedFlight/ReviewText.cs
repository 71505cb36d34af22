using Staging.Core.Flight;
using Staging.Core.Reviews;

namespace GapStagedFlight;

/// <summary>Prints a review in plain sections: the gap, the flight, what comes down, what to mind.</summary>
internal static class ReviewText
{
    private const int Width = 110;
    private const int NameWidth = 26;

    public static void Write(StagingReview review, TextWriter to)
    {
        to.WriteLine($"Staging review: {review.Plan.Name}");
        foreach (GapReview gap in review.Gaps)
            GapText.Write(gap, to);
        Flight(review.Flight, to);
        Descent(review.Flight, to);
        Cautions(review, to);
        Heading("Authority", to);
        Wrapped("  ", "This review informs. Local codes, the range safety officer and licensed practice decide.", to);
    }

    public static string Result(StagingReview review)
    {
        if (review.EveryStageLights)
            return "result: every stage lights";
        StagingReport? cold = review.Flight.Stagings.FirstOrDefault(s => !s.Lit);
        return $"result: stage {cold?.UpperStage ?? review.Plan.Flight.Stages[review.Flight.Stagings.Length + 1].Name} stays cold";
    }

    public static void Heading(string text, TextWriter to) => to.WriteLine($"\n{text}");

    public static void Row(string name, string value, TextWriter to) => to.WriteLine($"  {name.PadRight(NameWidth)}{value}");

    private static void Flight(FlightRun flight, TextWriter to)
    {
        Heading("Flight", to);
        Row("lift-off mass", $"{flight.Plan.LiftOffMass.Grams,7:F1} g", to);
        Row("end of guide", flight.GuideExitSpeed is { } exit ? $"{exit.MetersPerSecond,7:F1} m/s" : "    not reached", to);
        foreach (StagingReport s in flight.Stagings)
        {
            Row($"burn-through, {s.LowerStage}", $"{s.State.Speed.MetersPerSecond,7:F1} m/s at {s.State.Height.Meters:F0} m, {s.State.Time.Seconds:F3} s after launch", to);
            Row($"ignition, {s.UpperStage}", s is { Ignition: { } t, Velocity: { } v, Height: { } h }
                ? $"{v.MetersPerSecond,7:F1} m/s at {h.Meters:F0} m, {t.Seconds:F3} s after launch"
                : "    stays cold", to);
        }

        Row("greatest speed", $"{flight.MaximumSpeed.MetersPerSecond,7:F1} m/s", to);
        Row("apogee", flight.Apogee is { } apogee ? $"{apogee.Meters,7:F0} m, {flight.Main.ApogeeTime!.Value.Seconds:F1} s after launch" : "    not reached", to);
        if (flight.Main.Find(FlightEventKind.Ejection) is { } ejection)
            Row("ejection", $"{ejection.Before.Velocity.MetersPerSecond,7:F1} m/s at {ejection.Before.Height.Meters:F0} m, {ejection.Time.Seconds:F1} s after launch", to);
    }

    private static void Descent(FlightRun flight, TextWriter to)
    {
        Heading("What comes down            lands [s]  speed [m/s]  energy [J]  drift [m]", to);
        foreach (BodyFlight body in flight.Bodies)
            Piece(body.Name, body, to);
        foreach (FlightBranch branch in flight.Branches)
        {
            Heading($"If {branch.Description}", to);
            foreach (BodyFlight body in branch.Bodies)
                Piece(body.Name, body, to);
        }
    }

    private static void Piece(string name, BodyFlight body, TextWriter to) => to.WriteLine(body.Outcome is FlightOutcome.Landed landed
        ? $"  {name.PadRight(NameWidth - 1)}{landed.Time.Seconds,9:F1}{landed.Speed.MetersPerSecond,13:F1}{landed.KineticEnergy.Joules,12:F2}{body.DriftEstimate?.Meters ?? 0,11:F0}"
        : $"  {name.PadRight(NameWidth - 1)}  no landing found: treat it as unknown");

    private static void Cautions(StagingReview review, TextWriter to)
    {
        Heading("Cautions (! marks a rule that the plan is outside of)", to);
        foreach (Caution c in review.Cautions.OrderByDescending(c => c.OutsideRule))
            Wrapped(c.OutsideRule ? "! " : "  ", c.ToString(), to);
        foreach (Staging.Core.ModelFinding f in review.Findings)
            Wrapped("  ", f.ToString(), to);
    }

    private static void Wrapped(string mark, string text, TextWriter to)
    {
        string line = mark;
        foreach (string word in text.Split(' '))
        {
            if (line.Length + word.Length + 1 > Width)
            {
                to.WriteLine(line);
                line = "    ";
            }

            line += line.Trim().Length == 0 || line == mark ? word : " " + word;
        }

        to.WriteLine(line);
    }
}
