using ScottPlot;
using Staging.Core.Flight;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>Height and speed of the main body against time, with its events.</summary>
internal static class FlightFigure
{
    private const double PastApogee = 1.6;
    private const double RowHeight = 0.06;
    private const int Rows = 3;

    public static Plot Draw(FlightRun flight)
    {
        FlightColumns c = flight.Main.Sample(Duration.FromMilliseconds(10));
        double[] t = c.Time_s.ToArray(), h = c.Height_m.ToArray(), v = c.Velocity_m_per_s.ToArray();
        double end = Math.Min(t[^1], PastApogee * (flight.Main.ApogeeTime?.Seconds ?? t[^1]));
        double top = 1.3 * h.Max(), fastest = 1.3 * v.Max(), slowest = -0.12 * v.Max();
        Plot plot = Style.NewPlot("The flight of the uppermost stage", "time since launch [s]", "height [m]", "speed, upwards positive [m/s]");
        plot.Curve(t, h, Style.Blue, onRight: false);
        plot.Curve(t, v, Style.Red, onRight: true);
        int row = 0;
        foreach (FlightEvent e in flight.Main.Events.Where(e => Name(e) is not null && e.Time.Seconds < end))
        {
            Alignment side = e.Kind == FlightEventKind.Ejection ? Alignment.UpperRight : Alignment.UpperLeft;
            plot.Moment(e.Time.Seconds, Name(e)!, (0.98 - RowHeight * (row++ % Rows)) * top, alignment: side);
        }

        plot.Frame(end, top, fastest, top * slowest / fastest, slowest);
        return plot;
    }

    private static string? Name(FlightEvent e) => e.Kind switch
    {
        FlightEventKind.Burnout => $"burnout, {e.Stage}",
        FlightEventKind.Ignition when e.Time.Seconds > 0 => $"ignition, {e.Stage}",
        FlightEventKind.Apogee => "apogee",
        FlightEventKind.Ejection => "ejection",
        _ => null,
    };
}
