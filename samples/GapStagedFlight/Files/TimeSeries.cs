using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight.Files;

/// <summary>The course of every gap and of every body in flight as CSV: SI units, told in the heads of the columns.</summary>
internal static class TimeSeries
{
    /// <summary>Steps of the tables [s]; a gap that is watched for long has longer ones.</summary>
    private const double GapStep = 50e-6, FlightStep = 0.01;

    private const int MostRows = 20_000;

    /// <summary>Writes the tables and gives their paths.</summary>
    public static IReadOnlyList<string> Write(StagingReview review, string directory)
    {
        var files = new List<string>();
        foreach (GapReview gap in review.Gaps)
        {
            GapColumns columns = gap.Run.Sample(Duration.FromSeconds(Math.Max(GapStep, gap.Run.End.Seconds / MostRows)));
            Table("gap" + FileName.Suffix(review, gap), columns.WriteCsv);
        }

        for (int i = 0; i < review.Flight.Bodies.Length; i++)
        {
            BodyFlight body = review.Flight.Bodies[i];
            if (!body.HasHistory) // a booster that is left standing on the guide
                continue;
            FlightColumns columns = body.Sample(Duration.FromSeconds(Math.Max(FlightStep, (body.End - body.Start).Seconds / MostRows)));
            Table(i == 0 ? "flight" : FormattableString.Invariant($"flight-{i + 1}-{FileName.Of(body.Name)}"), columns.WriteCsv);
        }

        return files;

        void Table(string name, Action<TextWriter> write)
        {
            files.Add(Path.Combine(directory, name + ".csv"));
            using StreamWriter file = File.CreateText(files[^1]);
            write(file);
        }
    }
}
