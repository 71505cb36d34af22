using Samples;
using ScottPlot;
using Staging.Core.Reviews;

namespace GapStagedFlight;

/// <summary>Writes the figures of a review, each as SVG and as PNG.</summary>
internal static class Figures
{
    /// <summary>Returns the paths, without their endings.</summary>
    public static IEnumerable<string> Write(StagingReview review, string directory)
    {
        Directory.CreateDirectory(directory);
        foreach (GapReview gap in review.Gaps)
        {
            string stage = review.Gaps.Length > 1 ? "-" + FileName(gap.Staging.UpperStage) : "";
            yield return Save(GapFigure.Draw(gap), directory, "gap" + stage);
            yield return Save(RaceFigure.Draw(gap), directory, "race" + stage);
        }

        yield return Save(FlightFigure.Draw(review.Flight), directory, "flight");
    }

    private static string FileName(string text) => string.Concat(text.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    private static string Save(Plot plot, string directory, string name)
    {
        using (plot)
            return plot.Save(directory, name);
    }
}
