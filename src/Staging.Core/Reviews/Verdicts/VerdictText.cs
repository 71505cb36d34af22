namespace Staging.Core.Reviews;

/// <summary>The verdict in words: the first lines of a review.</summary>
internal static class VerdictText
{
    private const int Indent = 4;

    public static string Words(Verdict verdict) => verdict switch
    {
        Verdict.Lights => "lights",
        Verdict.MayLight => "may light",
        _ => "stays cold",
    };

    public static void Write(StagingReview review, TextSheet sheet)
    {
        sheet.Wrapped("", Headline(review), Indent);
        foreach (StageVerdict stage in review.Stages)
        {
            string odds = stage.Lit is { } share && review.Stages.Length > 1 ? $" (lit in {OddsText.Share(share)})" : "";
            string kind = stage.Verdict == Verdict.MayLight ? $"; nominally it {(stage.LightsNominally ? "lights" : "stays cold")}" : "";
            string assumed = stage.IsAssumed ? ", assumed" : "";
            sheet.Wrapped("  ", $"{stage.Stage} {Words(stage.Verdict)}{odds}{kind}{assumed}: {stage.Reason}", Indent);
            foreach (TriedChange change in stage.Tried)
                sheet.Wrapped("  ", $"tried, {change}", Indent);
        }

        if (Decides(review) is { } decides)
            sheet.Wrapped("  ", decides, Indent);
    }

    private static string Headline(StagingReview review)
    {
        string all = review.Stages.Length > 1 ? "every stage " : "";
        string assumed = review.Stages.All(s => s.IsAssumed) ? ", by assumption"
            : review.Stages.Any(s => s.IsAssumed) ? ", in part by assumption"
            : "";
        if (review.Stages.IsEmpty)
            return "Verdict: one stage, nothing to light in flight.";
        string odds = review.Odds is { } known
            ? $" {(review.Stages.Length > 1 ? "All light" : "It lights")} in {OddsText.Share(known.EveryStageLights)} over what is judged"
                + (known.NotVaried.IsEmpty ? "." : $" (not varied: {string.Join(", ", known.NotVaried)}).")
            : " Nominal case only, no odds.";
        return review.Verdict switch
        {
            Verdict.Lights => $"Verdict: {all}LIGHTS{assumed}.{odds}",
            Verdict.MayLight => $"Verdict: {all}MAY LIGHT{assumed}.{odds}",
            _ => $"Verdict: {review.Stages.First(s => s.Verdict == Verdict.StaysCold).Stage} STAYS COLD.{odds}",
        };
    }

    /// <summary>The inputs that the margin follows most closely; null without odds, or where it follows none.</summary>
    private static string? Decides(StagingReview review)
    {
        if (review.Odds is null || review.Verdict != Verdict.MayLight)
            return null;
        RankedInput[] told = [.. review.Odds.WhatMatters().Inputs.Where(i => !i.Interval.Holds(0)).Take(3)];
        return told.Length == 0 ? null
            : "What decides, by rank correlation with the margin: "
                + string.Join(", ", told.Select(i => Invariant.Text($"{Name(i.Input.Name)} ({i.Correlation:+0.00;-0.00})"))) + ".";
    }

    /// <summary>
    /// An input's name in plain words: <c>source.fresh-faces</c> is "source fresh faces"; those of the model stand
    /// alone.
    /// </summary>
    private static string Name(string input)
    {
        string name = input.StartsWith(JudgedInputs.OfTheModel, StringComparison.Ordinal) ? input[JudgedInputs.OfTheModel.Length..] : input;
        return name.Replace('.', ' ').Replace('-', ' ');
    }
}
