using Staging.Core.Flight;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight.Figures;

/// <summary>Height and speed of the main body against time, with its events.</summary>
internal static class FlightFigure
{
    /// <summary>How much is shown, as a multiple of the time of apogee: a fall to the ground, or the first of a slow descent.</summary>
    private const double PastApogee = 1.5, Fall = 3.5;

    /// <summary>Room for words above height and speed [-].</summary>
    private const double Room = 1.45;

    public static DrawnFigure Draw(StagingReview review)
    {
        BodyFlight main = review.Flight.Main;
        FlightColumns c = main.Sample(Duration.FromMilliseconds(10));
        double end = End(main);
        int count = Math.Max(2, c.Time_s.ToArray().Count(t => t <= end));
        double[] t = c.Time_s.ToArray()[..count], h = c[FlightChannel.Height].ToArray()[..count], v = c[FlightChannel.Velocity].ToArray()[..count];
        double top = Room * Math.Max(1, h.Max()), fastest = Room * Math.Max(1, v.Max()), slowest = Math.Min(-0.1 * fastest / Room, 1.1 * v.Min());
        double bottom = top * slowest / fastest;

        var figure = new TwoAxes(Titles.Flight(review), "time since launch [s]", "height [m]", "speed, upwards positive [m/s]");
        figure.Curve(t, h, name: "height", near: 0.8);
        figure.Curve(t, v, onRight: true, name: "speed", near: 0.5);
        foreach (FlightEvent e in main.Events.Where(e => e.Time.Seconds <= end))
        {
            if (Words(e, main, review.Plan.Flight.Stages.Length > 1) is { } words)
                figure.Moment(e.Time.Seconds, words);
        }

        figure.LeftTicks(x => x >= 0);
        return figure.Finish(end, (bottom, top), (slowest, fastest));
    }

    private static double End(BodyFlight main)
    {
        double last = main.End.Seconds, apogee = main.ApogeeTime?.Seconds ?? last;
        return last <= Fall * apogee ? last : PastApogee * apogee;
    }

    private static string? Words(FlightEvent e, BodyFlight body, bool staged)
    {
        string stage = staged ? Titles.Name(e.Stage) + " " : "";
        return e.Kind switch
        {
            FlightEventKind.BurnThrough => $"{stage}burns through: {Speed(e.Before)}, {Height(e.Before)}",
            FlightEventKind.Ignition when e.Time.Seconds > 0 => $"{stage}lit: {Speed(e.After)}, {Height(e.After)}",
            FlightEventKind.IgnitionRefused => $"{stage}stays cold",
            FlightEventKind.Burnout when e.Before.Height.Meters > 0 && e.Note is null && body.Find(FlightEventKind.BurnThrough, e.Stage) is null =>
                $"{stage}burnt out: {Speed(e.Before)}, {Height(e.Before)}",
            FlightEventKind.Apogee => $"apogee: {Height(e.After)}",
            FlightEventKind.Ejection => $"ejection: {Speed(e.Before)}",
            FlightEventKind.Landing => $"ground: {Speed(e.Before)}",
            _ => null,
        };
    }

    private static string Speed(FlightState state) => FormattableString.Invariant($"{Math.Abs(state.Velocity.MetersPerSecond):F0} m/s");

    private static string Height(FlightState state) => FormattableString.Invariant($"{state.Height.Meters:F0} m");
}
