using System.Globalization;
using Staging.Core.Reviews;
using Staging.Core.Sizing;

namespace GapStagedFlight.Sheet;

/// <summary>Writes the builder's sheets of a review: every wall as SVG pages, and all of them as one PDF.</summary>
internal static class Sheets
{
    /// <summary>Returns the files written, and a line for every wall that could not be drawn.</summary>
    public static (IReadOnlyList<string> Files, IReadOnlyList<string> NotDrawn) Write(StagingReview review, string directory, Paper paper)
    {
        var drawn = new List<(string Name, string Title, HoleTemplate Wall)>();
        var missing = new List<string>();
        foreach (GapReview gap in review.Gaps)
        {
            foreach ((string how, HoleTemplate wall) in Walls(gap))
            {
                string between = review.Gaps.Length == 1 ? "" : $", {gap.Staging.LowerStage} to {gap.Staging.UpperStage}";
                string title = $"{wall.Wall}{between}, {how}";
                if (wall.OuterDiameter is null)
                    missing.AddRange(wall.Findings.Select(f => f.Message));
                else
                    drawn.Add(($"drill{FileName.Suffix(review, gap)}-{FileName.Of(wall.Wall)}-{FileName.Of(how)}", title, wall));
            }
        }

        return (drawn.Count == 0 ? [] : Written(drawn, review.Plan.Name, directory, paper), [.. missing.Distinct()]);
    }

    private static List<string> Written(List<(string Name, string Title, HoleTemplate Wall)> walls, string plan, string directory, Paper paper)
    {
        Directory.CreateDirectory(directory);
        var files = new List<string> { Path.Combine(directory, "drill.pdf") };
        var pdf = new PdfPen(paper, plan);
        foreach ((string name, string title, HoleTemplate wall) in walls)
        {
            var pages = new SheetPages(paper, plan, title, wall);
            for (int page = 0; page < pages.Count; page++)
            {
                pdf.BeginPage();
                pages.Draw(pdf, page);
                var svg = new SvgPen(paper, title);
                pages.Draw(svg, page);
                string number = pages.Count == 1 ? "" : "-" + (page + 1).ToString(CultureInfo.InvariantCulture);
                files.Add(Path.Combine(directory, Unused(files, directory, name + number)));
                svg.Save(files[^1]);
            }
        }

        pdf.Save(files[0]);
        return files;
    }

    /// <summary>A wall that is drawn as advised once; otherwise as advised and as drawn.</summary>
    private static IEnumerable<(string How, HoleTemplate Wall)> Walls(GapReview gap)
    {
        HoleTemplate[] drawn = [.. HoleTemplate.Of(gap.Run.Problem.Design)];
        HoleTemplate[] advised = gap.Advice is { } sized ? [.. HoleTemplate.Of(sized)] : [];
        string[] plan = [.. drawn.Select(w => w.ToString())], advice = [.. advised.Select(w => w.ToString())];
        return
        [
            .. advised.Select(w => (plan.Contains(w.ToString()) ? "as drawn and advised" : "as advised", w)),
            .. drawn.Where(w => !advice.Contains(w.ToString())).Select(w => ("as drawn", w)),
        ];
    }

    /// <summary>A name that no file before has: a wall of two diameters has two sheets.</summary>
    private static string Unused(List<string> files, string directory, string name)
    {
        string free = name;
        for (char more = 'b'; files.Contains(Path.Combine(directory, free + ".svg")); more++)
            free = name + more;
        return free + ".svg";
    }
}
