using System.Globalization;
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
            GapColumns c = gap.Run.Sample(Duration.FromSeconds(Math.Max(GapStep, gap.Run.End.Seconds / MostRows)));
            Table("gap" + FileName.Suffix(review, gap), c.Time_s,
                [.. Enum.GetValues<GapChannel>().Select(x => ($"{Words(x)} [{GapColumns.UnitOf(x)}]", c[x]))]);
        }

        for (int i = 0; i < review.Flight.Bodies.Length; i++)
        {
            BodyFlight body = review.Flight.Bodies[i];
            FlightColumns c = body.Sample(Duration.FromSeconds(Math.Max(FlightStep, (body.End - body.Start).Seconds / MostRows)));
            Table(i == 0 ? "flight" : FormattableString.Invariant($"flight-{i + 1}-{FileName.Of(body.Name)}"), c.Time_s,
                [.. Enum.GetValues<FlightChannel>().Select(x => ($"{Words(x)} [{FlightColumns.UnitOf(x)}]", c[x]))]);
        }

        return files;

        void Table(string name, ReadOnlyMemory<double> time, (string Head, ReadOnlyMemory<double> Values)[] columns)
        {
            files.Add(Path.Combine(directory, name + ".csv"));
            File.WriteAllLines(files[^1], Enumerable.Range(0, time.Length).Select(row => Line(time, columns, row))
                .Prepend(string.Join(',', columns.Select(x => x.Head).Prepend("time [s]"))));
        }
    }

    private static string Line(ReadOnlyMemory<double> time, (string Head, ReadOnlyMemory<double> Values)[] columns, int row) =>
        string.Join(',', columns.Select(x => x.Values.Span[row]).Prepend(time.Span[row]).Select(v => v.ToString("R", CultureInfo.InvariantCulture)));

    /// <summary>A channel's name in words: <c>GapPressure</c> is "gap pressure".</summary>
    private static string Words(Enum channel) =>
        string.Concat(channel.ToString().Select((c, i) => char.IsUpper(c) ? $"{(i > 0 ? " " : "")}{char.ToLowerInvariant(c)}" : $"{c}"));
}
