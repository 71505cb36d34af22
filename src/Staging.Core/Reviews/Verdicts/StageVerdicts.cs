using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>
/// Judges every stage above the lowest: by the odds where they were asked for, by the nominal case otherwise.
/// </summary>
internal static class StageVerdicts
{
    /// <summary>Least share of cases, at 95 %, for a stage to be said to light [-]: a judgement.</summary>
    private const double Sure = 0.9;

    public static IEnumerable<StageVerdict> Of(StagingPlan plan, FlightRun flight, ImmutableArray<GapReview> gaps, Odds? odds)
    {
        for (int i = 1; i < plan.Flight.Stages.Length; i++)
        {
            Stage stage = plan.Flight.Stages[i];
            StagingReport? staging = flight.Stagings.FirstOrDefault(s => s.UpperStage == stage.Name);
            bool lit = staging is { Lit: true };
            bool assumed = lit && stage.Gap() is null;
            Proportion? share = odds?.Stages.First(s => s.Stage == stage.Name).Lights;
            Verdict verdict = share is null ? lit ? Verdict.Lights : Verdict.StaysCold : Of(share, lit);
            string reason = staging is null
                ? "its turn does not come: a stage below it stays cold, or the flight ends before its burnout."
                : assumed ? $"{Assumption(stage.Ignition)} {staging.Reason}" : staging.Reason;
            GapReview? gap = gaps.FirstOrDefault(g => g.Staging == staging);
            yield return new StageVerdict(stage.Name, verdict, assumed, reason, gap?.Tried ?? [])
            {
                LightsNominally = lit,
                Lit = share,
            };
        }
    }

    /// <summary>A few cases that all light do not show that it lights: the share has to be known to be large.</summary>
    private static Verdict Of(Proportion share, bool lit) =>
        lit && share.Hits == share.Cases && share.Wilson().Low > Sure ? Verdict.Lights
        : !lit && share.Hits == 0 ? Verdict.StaysCold
        : Verdict.MayLight;

    /// <summary>The least sure of the stages; a stack of one stage has nothing to light.</summary>
    public static Verdict Worst(ImmutableArray<StageVerdict> stages) =>
        stages.IsEmpty ? Verdict.Lights : stages.Max(s => s.Verdict);

    private static string Assumption(StageIgnition ignition) => ignition.Match(
        _ => "The launch igniter is taken to work.",
        contact => Invariant.Text(
            $"Motors in contact are taken to light {contact.Lag.Seconds:G3} s after burn-through; no gap is computed."),
        _ => "The gap model of this stage is not one of this library.",
        electronics => Invariant.Text($"The igniter is taken to light the motor {electronics.IgniterLag.Seconds:G3} s after it fires."));
}
