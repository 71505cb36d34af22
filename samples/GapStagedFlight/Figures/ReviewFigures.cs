using Staging.Core.Reviews;

namespace GapStagedFlight.Figures;

/// <summary>The figures of a review: two for every gap that was reached, and the flight.</summary>
internal static class ReviewFigures
{
    /// <summary>Draws them one after the other; whoever asks disposes of them.</summary>
    public static IEnumerable<(string Name, DrawnFigure Figure)> Of(StagingReview review)
    {
        foreach (GapReview gap in review.Gaps)
        {
            string stage = FileName.Suffix(review, gap);
            yield return ("gap" + stage, GapFigure.Draw(gap));
            yield return ("race" + stage, RaceFigure.Draw(gap));
        }

        yield return ("flight", FlightFigure.Draw(review));
    }

    /// <summary>Writes each as SVG and as PNG; gives the paths without their endings.</summary>
    public static IEnumerable<string> Write(StagingReview review, string directory)
    {
        foreach ((string name, DrawnFigure figure) in Of(review))
        {
            using (figure)
                yield return figure.Save(directory, name);
        }
    }
}
