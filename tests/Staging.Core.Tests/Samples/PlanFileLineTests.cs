using System.Globalization;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;

namespace Staging.Core.Tests.Samples;

/// <summary>
/// Every line about gaps, flight and landings in the reviews of the plan files, against the runs: nothing is said that they do not hold, and
/// nothing of it is left out. The verdict and what to build have tests of their own.
/// </summary>
public class PlanFileLineTests
{
    [Theory]
    [MemberData(nameof(PlanFilesTests.Plans), MemberType = typeof(PlanFilesTests))]
    public void Every_line_says_what_the_run_did(string name, bool lights)
    {
        StagingReview review = PlanFiles.Review(name);
        string[] lines = review.ToString(1000).Split('\n');
        Assert.Equal(lights, review.EveryStageLights);
        foreach (GapReview gap in review.Gaps)
            Same([.. Gap(gap)], Section(lines, $"Gap from {gap.Staging.LowerStage} to {gap.Staging.UpperStage}: "));
        Same([.. Flight(review.Flight)], Section(lines, "Flight"));
        Same([.. Landings(review.Flight)], [.. Section(lines, "What comes down").Select(WithoutDevice)]);
    }

    private static void Same(string[] expected, string[] said)
    {
        Assert.Equal(expected.Length, said.Length);
        Assert.All(expected.Zip(said), pair => Assert.StartsWith(pair.First, pair.Second, StringComparison.Ordinal));
    }

    private static string[] Section(string[] lines, string heading) =>
        [.. lines.SkipWhile(l => !l.StartsWith(heading, StringComparison.Ordinal)).Skip(1).TakeWhile(l => l.Length > 0)];

    private static IEnumerable<string> Gap(GapReview gap)
    {
        GapRun run = gap.Run;
        FrictionJoint joint = run.Problem.Design.Joint.Coupler;
        if (gap.Bracket is { } bracket)
        {
            yield return Words("over what is unknown", bracket.Verdict);
            yield return Words("  does the joint hold", "Joint of ");
            yield return Words("  does fire arrive", "");
            if (bracket.OldFacesSteadyVent is not null)
                yield return Words("  which vents", "Vents: ");
        }

        (string Label, GapEventKind Kind)[] moments =
        [
            ("front at the last vent", GapEventKind.FrontAtLastVent), ("pieces at the nozzle", GapEventKind.PiecesAtNozzle),
            ("products at the nozzle", GapEventKind.ProductsAtNozzle), ("grain lit", GapEventKind.Lit),
            ("joint starts to slide", GapEventKind.JointMoves), ("joint opens", GapEventKind.JointOpens),
        ];
        foreach ((string label, GapEventKind kind) in moments)
        {
            if (run.Events.FirstOrDefault(e => e.Kind == kind) is { } at)
                yield return Row(label, at.Time.Milliseconds, "F2", "ms");
            else if (kind != GapEventKind.PiecesAtNozzle)
                yield return Words(label, string.Create(CultureInfo.InvariantCulture, $"not within {run.End.Milliseconds:F0} ms"));
        }

        yield return run.Outcome is GapOutcome.Lit { MarginToSeparation: { } margin }
            ? Row("margin, lit to open", margin.Milliseconds, "F2", "ms")
            : Words("margin, lit to open", run.Outcome.IsLit ? "the gap pressure alone does not open the joint" : "none");
        string push = string.Create(CultureInfo.InvariantCulture,
            $" gauge; it pushes with {run.PeakGaugePressure.Pascals * joint.PressureArea.SquareMeters:F1} N");
        yield return Row("peak gap pressure", run.PeakGaugePressure.Kilopascals, "F1", "kPa ") + push;
        yield return Row("peak grain surface", run.PeakGrainSurface.Kelvins, "F0", "K");
        yield return Words("cause", run.Outcome.Cause);
        yield return Words(run.Outcome.IsLit ? "what keeps the margin" : "what would help", run.Outcome.Remedy);
    }

    private static IEnumerable<string> Flight(FlightRun flight)
    {
        yield return Row("lift-off mass", flight.Plan.LiftOffMass.Grams, "F1", "g");
        yield return Row("end of guide", flight.GuideExitSpeed?.MetersPerSecond, "F1", "m/s", "not reached");
        foreach (StagingReport s in flight.Stagings)
        {
            yield return Row($"burn-through, {s.LowerStage}", s.State.Speed.MetersPerSecond, "F1", "m/s");
            yield return Row($"ignition, {s.UpperStage}", s.Velocity?.MetersPerSecond, "F1", "m/s", "stays cold");
        }

        if (flight.Main.Events.FirstOrDefault(e => e.Kind == FlightEventKind.MaximumSpeed) is { } fastest)
            yield return Row("greatest speed", fastest.After.Velocity.MetersPerSecond, "F1", "m/s");
        yield return Row("apogee", flight.Apogee?.Meters, "F0", "m", "not reached");
        if (flight.Main.Events.FirstOrDefault(e => e.Kind == FlightEventKind.Ejection) is { } ejection)
            yield return Row("ejection", ejection.Before.Velocity.MetersPerSecond, "F1", "m/s");
    }

    private static IEnumerable<string> Landings(FlightRun flight)
    {
        foreach (BodyFlight body in flight.Bodies)
            yield return Landing("  ", body);
        foreach (FailureCase failure in flight.FailureCases)
        {
            yield return $"  if {failure.Description}";
            foreach (BodyFlight body in failure.Bodies)
                yield return Landing("    ", body);
        }
    }

    private static string Landing(string indent, BodyFlight body) => body.Outcome is FlightOutcome.Landed landed
        ? string.Join(' ', indent + body.Name, Text(landed.Time.Seconds, "F1"), Text(landed.Speed.MetersPerSecond, "F1"),
            Text(landed.KineticEnergy.Joules, "F1"), Text(body.DriftEstimate?.Meters ?? 0, "F0"))
        : indent + body.Name + " no landing found: treat it as unknown";

    /// <summary>A line of landings with single spaces, and without how the piece comes down.</summary>
    private static string WithoutDevice(string line)
    {
        if (line.StartsWith("  if ", StringComparison.Ordinal))
            return line;
        string indent = line[..^line.TrimStart().Length];
        string words = string.Join(' ', line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        foreach (string device in (string[])[" parachute", " streamer", " tumbling", " nose first"])
            words = words.Replace(device, "", StringComparison.Ordinal);
        return indent + words;
    }

    private static string Row(string label, double? value, string format, string unit, string otherwise = "") => value is { } number
        ? $"  {label.PadRight(26)}{Text(number, format),8} {unit}"
        : Words(label, otherwise);

    private static string Words(string label, string words) => $"  {label.PadRight(26)} {words}";

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
