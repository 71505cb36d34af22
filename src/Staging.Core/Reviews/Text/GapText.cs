using Staging.Core.Gaps;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

/// <summary>What a review says of one gap: the race, and what to build.</summary>
internal static class GapText
{
    public static void Write(GapReview gap, TextSheet sheet)
    {
        GapRun run = gap.Run;
        GapDesign design = run.Problem.Design;
        sheet.Heading(Invariant.Text($"Gap from {gap.Staging.LowerStage} to {gap.Staging.UpperStage}: "
            + $"{design.Tube.Length.Millimeters:F0} mm long, bore {design.Tube.Bore.Millimeters:F1} mm"));
        if (gap.Bracket is { } bracket)
            Unknown(bracket, sheet);
        Moment("front at the last vent", run, GapEventKind.FrontAtLastVent, sheet);
        if (run.TimeOf(GapEventKind.PiecesAtNozzle) is not null)
            Moment("pieces at the nozzle", run, GapEventKind.PiecesAtNozzle, sheet);
        Moment("products at the nozzle", run, GapEventKind.ProductsAtNozzle, sheet);
        Moment("grain lit", run, GapEventKind.Lit, sheet);
        Moment("joint starts to slide", run, GapEventKind.JointMoves, sheet);
        Moment("joint opens", run, GapEventKind.JointOpens, sheet);
        if (run.Outcome is GapOutcome.Lit { MarginToSeparation: { } margin })
            sheet.Row("margin, lit to open", margin.Milliseconds, "F2", "ms");
        else
            sheet.Row("margin, lit to open", run.Outcome.IsLit ? "the gap pressure alone does not open the joint" : "none");
        FrictionJoint joint = design.Joint.Coupler;
        string tape = design.Joint.Tape is { } round ? Invariant.Text($", its tape {round.Strength.Newtons:F0} N") : "";
        double push = run.PeakGaugePressure.Pascals * joint.PressureArea.SquareMeters;
        sheet.Row("peak gap pressure", run.PeakGaugePressure.Kilopascals, "F1", "kPa",
            Invariant.Text($"gauge; it pushes with {push:F1} N, the joint holds {joint.BreakawayForce.Newtons:F0} N{tape}"));
        double ignition = design.Grain.IgnitionTemperature.Kelvins, spare = run.PeakGrainSurface.Kelvins - ignition;
        sheet.Row("peak grain surface", run.PeakGrainSurface.Kelvins, "F0", "K",
            Invariant.Text($"{Math.Abs(spare):F0} K {(spare < 0 ? "short of" : "above")} ignition at {ignition:F0} K"));
        sheet.Row("cause", run.Outcome.Cause);
        sheet.Row(run.Outcome.IsLit ? "what keeps the margin" : "what would help", run.Outcome.Remedy);
        BuildText.Write(gap, sheet);
    }

    private static void Unknown(GapBracket bracket, TextSheet sheet)
    {
        sheet.Row("over what is unknown", bracket.Verdict);
        sheet.Row("  does the joint hold", BracketText.Joint(bracket));
        sheet.Row("  does fire arrive", BracketText.Fire(bracket));
        if (BracketText.Vents(bracket) is { Length: > 0 } vents)
            sheet.Row("  which vents", vents);
    }

    private static void Moment(string name, GapRun run, GapEventKind kind, TextSheet sheet)
    {
        if (run.TimeOf(kind) is { } t)
            sheet.Row(name, t.Milliseconds, "F2", "ms", kind == GapEventKind.FrontAtLastVent ? "after burn-through" : "");
        else
            sheet.Row(name, Invariant.Text($"not within {run.End.Milliseconds:F0} ms"));
    }
}
