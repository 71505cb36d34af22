using Staging.Core.Discharge;
using Staging.Core.Gaps;
using UnitsNet;

namespace GapRows;

/// <summary>The gaps that common practice speaks of, all with the same source, grain and joint.</summary>
internal static class Rows
{
    private static readonly GapProblem Start = StartingGaps.Bore18mm;

    public static IEnumerable<string> Table()
    {
        yield return "| gap | vents | outcome | front at last vent [ms] | lit [ms] | joint opens [ms] | peak gauge pressure [kPa] | peak grain surface [K] |";
        yield return "|---|---|---|---|---|---|---|---|";
        yield return Row("250 mm", "one 6 mm hole", OneHole(250, 6));
        yield return Row("460 mm", "one 6 mm hole", OneHole(460, 6));
        yield return Row("900 mm", "one 6 mm hole", OneHole(900, 6));
        yield return Row("250 mm", "closed", With(250, _ => []));
        yield return Row("250 mm", "one 17 mm hole", OneHole(250, 17));
        yield return Row("250 mm", "wide open: six rings of four 10 mm holes, mid-tube to nozzle", With(250, WideOpen));
        yield return Row("120 mm", "four 6 mm holes (the demo)", With(120, t => [Below(t, 6, 4)]));
    }

    public static GapProblem OneHole(double length_mm, double diameter_mm) => With(length_mm, t => [Below(t, diameter_mm, 1)]);

    public static string Say(GapOutcome outcome) => outcome.Match(
        _ => "lit", _ => "pushed apart", _ => "vented away", _ => "too cool", _ => "did not reach", _ => "not solved");

    public static string Time(GapRun run, GapEventKind kind) => run.TimeOf(kind) is { } t ? $"{t.Milliseconds:F1}" : "-";

    public static GapProblem With(double length_mm, Func<GuideTube, IEnumerable<Vent>> vents)
    {
        GuideTube tube = Start.Design.Tube with { Length = Length.FromMillimeters(length_mm) };
        return Start with { Design = Start.Design with { Tube = tube, Vents = [.. vents(tube)] } };
    }

    public static Vent Below(GuideTube tube, double diameter_mm, int count) => Vent.BelowNozzle(tube, Holes(diameter_mm, count), Length.FromMillimeters(1));

    private static IEnumerable<Vent> WideOpen(GuideTube tube) =>
        [.. new double[] { 125, 148, 171, 194, 217 }.Select(x => new Vent { Station = Length.FromMillimeters(x), Holes = Holes(10, 4) }), Below(tube, 10, 4)];

    public static VentHoles Holes(double diameter_mm, int count) => new()
    {
        Diameter = Length.FromMillimeters(diameter_mm),
        WallThickness = Length.FromMillimeters(0.5),
        Count = count,
    };

    private static string Row(string gap, string vents, GapProblem problem)
    {
        GapRun run = problem.Solve();
        return $"| {gap} | {vents} | {Say(run.Outcome)} | {Time(run, GapEventKind.FrontAtLastVent)} | {Time(run, GapEventKind.Lit)} | {Time(run, GapEventKind.JointOpens)} | {run.PeakGaugePressure.Kilopascals:F0} | {run.PeakGrainSurface.Kelvins:F0} |";
    }
}
