using System.Text.Json;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>The verdict as JSON: for the stack and for each stage, with the odds where there are any.</summary>
internal static class VerdictJson
{
    /// <summary>Writes the object <c>verdict</c> of a review.</summary>
    public static void Write(Utf8JsonWriter w, StagingReview review)
    {
        w.WriteStartObject("verdict");
        w.WriteString("answer", Word(review.Verdict));
        WriteOdds(w, review.Odds?.EveryStageLights);
        ReviewJson.List(w, "stages", review.Stages, static (w, stage) =>
        {
            w.WriteString("stage", stage.Stage);
            w.WriteString("answer", Word(stage.Verdict));
            w.WriteBoolean("assumed", stage.IsAssumed);
            w.WriteString("reason", stage.Reason);
            WriteOdds(w, stage.Lit);
            ReviewJson.List(w, "tried", stage.Tried, static (w, tried) =>
            {
                w.WriteString("change", tried.Change);
                w.WriteBoolean("lightsBeforeParting", tried.Run.Outcome.IsLitBeforeParting);
                w.WriteString("cause", tried.Run.Outcome.Cause);
            });
        });
        w.WriteEndObject();
    }

    private static void WriteOdds(Utf8JsonWriter w, Proportion? share)
    {
        ReviewJson.Number(w, "casesLit", share?.Hits);
        ReviewJson.Number(w, "cases", share?.Cases);
        ReviewJson.Number(w, "leastShareAt95", share?.Wilson().Low);
        ReviewJson.Number(w, "greatestShareAt95", share?.Wilson().High);
    }

    private static string Word(Verdict verdict) => JsonNamingPolicy.CamelCase.ConvertName(verdict.ToString());
}
