using Samples;
using ScottPlot;
using Staging.Core.Flight;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>Height and speed of the main body against time, with its events.</summary>
internal static class FlightFigure
{
    private const double PastApogee = 1.5;
    private const double RowHeight = 0.07;
    private const int Rows = 4;

    public static Plot Draw(FlightRun flight)
    {
        FlightColumns c = flight.Main.Sample(Duration.FromMilliseconds(10));
        double[] t = c.Time_s.ToArray(), h = c[FlightChannel.Height].ToArray(), v = c[FlightChannel.Velocity].ToArray();
        double end = Math.Min(t[^1], PastApogee * (flight.Main.ApogeeTime?.Seconds ?? t[^1]));
        double top = 1.35 * h.Max(), fastest = 1.35 * v.Max(), slowest = -0.1 * v.Max(), bottom = top * slowest / fastest;
        Plot plot = TwoAxes.New("The flight of the uppermost stage", "time since launch [s]", "height [m]",
            "speed, upwards positive [m/s]");
        plot.Curve(t, h);
        plot.Curve(t, v, onRight: true);
        int climb = Array.FindIndex(h, x => x > 0.8 * h.Max()), slowing = Array.FindLastIndex(v, x => x > 0.35 * v.Max());
        plot.Beside("height", t[climb], h[climb], Figure.Blue, Alignment.LowerRight);
        plot.Beside("speed", t[slowing], v[slowing], Figure.Red, Alignment.UpperRight, onRight: true);
        int row = 0;
        foreach (FlightEvent e in flight.Main.Events.Where(e => Name(e) is not null && e.Time.Seconds < end))
        {
            Alignment side = e.Time.Seconds > 0.6 * end && e.Kind == FlightEventKind.Ejection ? Alignment.UpperRight : Alignment.UpperLeft;
            plot.Moment(e.Time.Seconds, Name(e)!, bottom, (0.985 - RowHeight * (row++ % Rows)) * top, side);
        }

        plot.Frame(end, (bottom, top), (slowest, fastest));
        plot.Axes.Left.TicksWhere(x => x >= 0);
        return plot;
    }

    private static string? Name(FlightEvent e) => e.Kind switch
    {
        FlightEventKind.BurnThrough => $"burn-through, {e.Stage}",
        FlightEventKind.Ignition when e.Time.Seconds > 0 =>
            $"{e.Stage} lit: {e.After.Velocity.MetersPerSecond:F0} m/s, {e.After.Height.Meters:F0} m",
        FlightEventKind.Burnout when e.Before.Height.Meters > 0 && e.Note is null =>
            $"burnout, {e.Stage}: {e.Before.Velocity.MetersPerSecond:F0} m/s, {e.Before.Height.Meters:F0} m",
        FlightEventKind.Apogee => $"apogee: {e.After.Height.Meters:F0} m",
        FlightEventKind.Ejection => $"ejection: {e.Before.Velocity.MetersPerSecond:F0} m/s",
        _ => null,
    };
}
