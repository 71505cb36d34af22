using GapStagedFlight.Figures;
using GapStagedFlight.Files;
using GapStagedFlight.Sheet;
using Staging.Core;
using Staging.Core.Plans;
using Staging.Core.Reviews;

namespace GapStagedFlight;

/// <summary>The command: reads and checks a plan, tries what is to be written, reviews, prints and writes.</summary>
internal static class Command
{
    public const int Lights = 0, StaysCold = 1, BadInput = 2;

    /// <summary>Does what the arguments ask for, and gives the exit code.</summary>
    public static int Run(IReadOnlyList<string> args, TextWriter output, TextWriter error)
    {
        var asked = new Arguments();
        try
        {
            asked = Arguments.Parse(args);
            if (asked.Help)
                return Say(output, Usage.Text);
            StagingPlan plan = StagingPlan.Read(asked.Plan);
            if (asked.Check)
                return Check(plan, output);
            Targets.Try(asked);
            StagingReview review = asked.Cases is { } cases ? plan.Review(cases: cases) : plan.Review();
            Say(output, asked.Json ? review.ToJson() : review.ToString());
            foreach (string written in Write(review, asked))
                Say(asked.Json ? error : output, "\n" + written);
            return review.EveryStageLights ? Lights : StaysCold;
        }
        catch (Exception e) when (e is ArgumentException or FormatException or IOException or UnauthorizedAccessException)
        {
            string[] problems = [.. Problems.Of(e, asked.Plan)];
            int untold = Problems.Untold(e);
            string more = problems.Length > 1 ? $" (and {problems.Length - 1 + untold} more; --all-problems lists them)" : "";
            foreach (string problem in asked.AllProblems ? problems : [problems[0] + more])
                Say(error, "error: " + problem);
            if (asked.AllProblems && untold > 0)
                Say(error, $"error: {asked.Plan}: and {untold} more problems, which are counted only");
            return BadInput;
        }
    }

    private static int Check(StagingPlan plan, TextWriter output)
    {
        ModelFinding[] findings = [.. plan.Check().OrderByDescending(f => f.Severity)];
        foreach (ModelFinding finding in findings)
            Say(output, $"{finding.Severity.ToString().ToLowerInvariant()}: {finding}");
        bool sound = findings.All(f => f.Severity != FindingSeverity.Error);
        Say(output, $"{plan.Name}: {(findings.Length == 0 ? "no findings" : sound ? "can be reviewed" : "cannot be reviewed")}");
        return sound ? Lights : BadInput;
    }

    /// <summary>Writes all files that were asked for, and tells of each kind.</summary>
    private static IEnumerable<string> Write(StagingReview review, Arguments asked)
    {
        if (asked.Figures is { } figures)
            yield return $"figures (SVG and PNG): {string.Join(", ", ReviewFigures.Write(review, figures))}";
        if (asked.Sheet is { } sheets)
        {
            (IReadOnlyList<string> files, IReadOnlyList<string> notDrawn) = Sheets.Write(review, sheets, asked.Paper);
            yield return string.Join('\n', [
                $"builder's sheets, to print at 100 %: {(files.Count == 0 ? "none, no holes" : string.Join(", ", files))}",
                .. notDrawn.Select(wall => $"not drawn: {wall}"),
            ]);
        }

        if (asked.Csv is { } tables)
            yield return $"time series: {string.Join(", ", TimeSeries.Write(review, tables))}";
        if (asked.Html is { } page)
        {
            File.WriteAllText(page, HtmlPage.Of(review));
            yield return $"page: {page}";
        }
    }

    private static int Say(TextWriter writer, string text)
    {
        writer.WriteLine(Plain.Text(text));
        return Lights;
    }
}
