using Staging.Core.Gaps;
using UnitsNet;

namespace GapRows;

/// <summary>
/// The demo motors in contact, by tape and by the share of their heat that particles leave in the grain, over its
/// judged range.
/// </summary>
internal static class Contact
{
    private static readonly double[] Efficiencies = [0.03, 0.1, 0.25, 0.6];

    public static IEnumerable<string> Table()
    {
        yield return $"| tape | torn [ms] | apart [ms] | {string.Join(" | ", Efficiencies.Select(e => $"particle efficiency {e:0.##}"))} |";
        yield return $"|---|---|---|{string.Concat(Efficiencies.Select(_ => "---|"))}";
        foreach (double newtons in new double[] { 100, 200, 300 })
        {
            yield return Row($"thin plastic film, {newtons:F0} N",
                JointTape.ThinPlasticFilm with { Strength = Force.FromNewtons(newtons) });
            yield return Row($"paper tape, {newtons:F0} N", JointTape.PaperTape with { Strength = Force.FromNewtons(newtons) });
        }
    }

    private static string Row(string name, JointTape tape)
    {
        GapProblem[] problems = [.. Efficiencies.Select(e =>
            DemoGap.AsBuilt.With(d => d with { MixingAndHeat = d.MixingAndHeat with { ParticleEfficiency = e } }).InContact(tape))];
        GapRun any = problems[0].Solve();
        string At(GapEventKind kind) => any.TimeOf(kind) is { } t ? $"{t.Milliseconds:F2}" : "-";
        return $"| {name} | {At(GapEventKind.JointMoves)} | {At(GapEventKind.JointOpens)} | {string.Join(" | ", problems.Select(Light))} |";
    }

    /// <summary>When the grain lights, before the motors have parted or after; or how far it stays short.</summary>
    private static string Light(GapProblem problem)
    {
        GapRun run = problem.Solve();
        if (run.Outcome is not GapOutcome.Lit lit)
            return $"dark, {problem.Design.Grain.IgnitionTemperature.Kelvins - run.PeakGrainSurface.Kelvins:F0} K short";
        return lit.MarginToSeparation < Duration.Zero
            ? $"lit at {lit.Time.Milliseconds:F2} ms, {run.At(lit.Time).JointTravel.Millimeters:F0} mm apart"
            : $"**lit** at {lit.Time.Milliseconds:F2} ms";
    }
}
