using System.Text.Json;
using Staging.Core.Plans;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>
/// Writes odds as JSON for other programs: SI numbers with the unit in the key, null where no case has the number.
/// </summary>
internal static class OddsJson
{
    public static string Of(Odds odds) => JsonText.Of(w =>
    {
        w.WriteStartObject();
        w.WriteString("plan", odds.Plan.Name);
        w.WriteNumber("cases", odds.Run.Cases);
        w.WriteNumber("casesNotSolved", odds.NotSolved);
        w.WriteNumber("seed", odds.Run.Seed);
        w.WriteStartObject("everyStageLights");
        WriteShare(w, odds.EveryStageLights);
        w.WriteEndObject();
        ReviewJson.List(w, "stages", odds.Stages, static (w, stage) =>
        {
            w.WriteString("stage", stage.Stage);
            WriteShare(w, stage.Lights);
            WriteMeasure(w, "margin_K", stage.Margin);
        });
        WriteMeasure(w, "margin_K", odds.Margin);
        WriteMeasure(w, "apogee_m", odds.Run.Measure(OddsStudy.Apogee));
        ReviewJson.List(w, "whatMatters", odds.WhatMatters().Inputs, static (w, ranked) =>
        {
            w.WriteString("input", ranked.Input.Name);
            w.WriteString("unit", ranked.Input.Unit);
            ReviewJson.Number(w, "rankCorrelation", ranked.Correlation);
            ReviewJson.Number(w, "leastAt95", ranked.Interval.Low);
            ReviewJson.Number(w, "greatestAt95", ranked.Interval.High);
        });
        WriteTexts(w, "notVaried", odds.NotVaried);
        ReviewJson.List(w, "refusals", odds.Run.Refusals, static (w, refusal) =>
        {
            w.WriteNumber("case", refusal.Key);
            w.WriteString("reason", refusal.Value);
        });
        w.WriteEndObject();
    });

    private static void WriteShare(Utf8JsonWriter w, Proportion share)
    {
        w.WriteNumber("casesLit", share.Hits);
        ReviewJson.Number(w, "share", share.Estimate);
        ReviewJson.Number(w, "leastShareAt95", share.Wilson().Low);
        ReviewJson.Number(w, "greatestShareAt95", share.Wilson().High);
    }

    /// <summary>Percentiles of a measure; null where no case has it.</summary>
    private static void WriteMeasure(Utf8JsonWriter w, string key, MeasureSummary? measure)
    {
        if (measure is not { Count: > 0 })
        {
            w.WriteNull(key);
            return;
        }

        w.WriteStartObject(key);
        w.WriteNumber("cases", measure.Count);
        ReviewJson.Number(w, "mean", measure.Mean);
        foreach (double percent in OddsText.Percents)
            ReviewJson.Number(w, Invariant.Text($"p{percent}"), measure.Percentile(percent).Value);
        w.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter w, string key, IEnumerable<string> texts)
    {
        w.WriteStartArray(key);
        foreach (string text in texts)
            w.WriteStringValue(text);
        w.WriteEndArray();
    }
}
