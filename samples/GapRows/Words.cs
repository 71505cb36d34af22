using Staging.Core.Gaps;

namespace GapRows;

/// <summary>Results in a few words.</summary>
internal static class Words
{
    public static string Of(GapOutcome outcome) => outcome.Match(
        _ => "lit", _ => "pushed apart", _ => "vented away", _ => "too cool", _ => "did not reach", _ => "not solved");

    public static string At(GapRun run, GapEventKind kind) => run.TimeOf(kind) is { } t ? $"{t.Milliseconds:F1}" : "-";

    /// <summary>The columns of a run, and what stands in them.</summary>
    public const string Columns = "outcome | front at last vent [ms] | lit [ms] | joint opens [ms] | peak gauge pressure [kPa] | peak "
        + "grain surface [K] |";

    public static string Columned(GapRun run) => $"{Of(run.Outcome)} | {At(run, GapEventKind.FrontAtLastVent)} | "
        + $"{At(run, GapEventKind.Lit)} | {At(run, GapEventKind.JointOpens)} | {run.PeakGaugePressure.Kilopascals:F0} | "
        + $"{run.PeakGrainSurface.Kelvins:F0} |";

    /// <summary>Outcome, its time where it has one, and how far the grain surface stayed below ignition.</summary>
    public static string InShort(GapProblem problem)
    {
        GapRun run = problem.Solve();
        double shortBy = problem.Design.Grain.IgnitionTemperature.Kelvins - run.PeakGrainSurface.Kelvins;
        return run.Outcome switch
        {
            GapOutcome.Lit lit => $"**lit** at {lit.Time.Milliseconds:F1} ms",
            GapOutcome.PushedApart => $"pushed apart at {run.Outcome.Time.Milliseconds:F1} ms, {shortBy:F0} K short",
            _ => $"{Of(run.Outcome)}, {shortBy:F0} K short",
        };
    }
}
