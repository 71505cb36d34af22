using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>Odds in a few lines.</summary>
internal static class OddsText
{
    private const int Width = 100, Indent = 4;

    public static readonly double[] Percents = [5, 25, 50, 75, 95];

    public static string Of(Odds odds)
    {
        var sheet = new TextSheet(Width);
        sheet.Line(Invariant.Text(
            $"Odds of {odds.Plan.Name}: {odds.Run.Cases} cases, {odds.Run.Inputs.Length} judged inputs over their whole ranges"));
        sheet.Line($"  every stage lights in {Share(odds.EveryStageLights)}");
        if (odds.Stages.Length > 1)
        {
            foreach (StageOdds stage in odds.Stages)
                sheet.Line($"  {stage}");
        }

        Percentiles(sheet, "margin [K], surface above ignition", odds.Margin);
        Percentiles(sheet, "apogee [m]", odds.Run.Measure(OddsStudy.Apogee));
        if (odds.NotSolved > 0)
            sheet.Line(Invariant.Text($"  not solved, and so neither lit nor cold: {odds.NotSolved} cases; they count against it"));
        foreach ((long number, string reason) in odds.Run.Refusals)
            sheet.Wrapped("  ", Invariant.Text($"case {number} was refused: {reason}"), Indent);
        if (!odds.NotVaried.IsEmpty)
            sheet.Wrapped("  ", $"not varied, since the gap has no such input: {string.Join(", ", odds.NotVaried)}", Indent);
        sheet.Wrapped("  ", "Most of this spread is what is not known, not what scatters from flight to flight. It informs; it permits "
            + "nothing.", Indent);
        return sheet.ToString();
    }

    public static string Of(InputRanking ranking)
    {
        var sheet = new TextSheet(Width);
        sheet.Line(Invariant.Text($"What moves the margin: rank correlation over {ranking.Cases} cases, and where it lies at 95 %"));
        foreach (RankedInput input in ranking.Inputs)
            sheet.Line("  " + input);
        return sheet.ToString();
    }

    /// <summary>A share in per cent with the score interval at 95 %.</summary>
    public static string Share(Proportion share)
    {
        Interval at95 = share.Wilson();
        return Invariant.Text(
            $"{100 * share.Estimate:F1} % ({share.Hits} of {share.Cases}; {100 * at95.Low:F1} to {100 * at95.High:F1} % at 95 %)");
    }

    private static void Percentiles(TextSheet sheet, string name, MeasureSummary measure) => sheet.Line(measure.Count == 0
        ? $"  {name}: no case"
        : $"  {name}: {string.Join(", ", Percents.Select(p => Invariant.Text($"{p} % below {measure.Percentile(p).Value:F0}")))}");
}
