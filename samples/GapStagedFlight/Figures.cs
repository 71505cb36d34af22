using ScottPlot;
using Staging.Core.Reviews;

namespace GapStagedFlight;

/// <summary>Writes the figures of a review.</summary>
internal static class Figures
{
    public static void Write(StagingReview review, string directory, TextWriter to)
    {
        Directory.CreateDirectory(directory);
        to.WriteLine();
        foreach (GapReview gap in review.Gaps)
        {
            string stage = review.Gaps.Length > 1 ? "-" + FileName(gap.Staging.UpperStage) : "";
            Save(() => GapFigure.Draw(gap), directory, "gap" + stage, to);
            Save(() => RaceFigure.Draw(gap), directory, "race" + stage, to);
        }

        Save(() => FlightFigure.Draw(review.Flight), directory, "flight", to);
    }

    private static string FileName(string text) => string.Concat(text.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    private static void Save(Func<Plot> draw, string directory, string name, TextWriter to)
    {
        using Plot plot = draw();
        string path = Path.Combine(directory, name);
        plot.SaveSvg(path + ".svg", Style.Width, Style.Height);
        plot.SavePng(path + ".png", Style.Width, Style.Height);
        to.WriteLine($"figure: {path}.svg, {path}.png");
    }
}
