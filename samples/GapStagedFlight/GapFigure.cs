using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>Gap pressure and front station against time.</summary>
internal static class GapFigure
{
    private const double AfterLit = 2;

    public static Plot Draw(GapReview gap)
    {
        GapRun run = gap.Run;
        GapColumns c = run.Sample(Duration.FromMicroseconds(50));
        double outside = run.Problem.Surroundings.Pressure.Pascals;
        double[] t = [.. c.Time_s.ToArray().Select(s => s * 1e3)];
        double[] gauge = [.. c.GapPressure_Pa.ToArray().Select(p => (p - outside) / 1e3)];
        double[] front = [.. c.Front_m.ToArray().Select(x => x * 1e3)];
        double length = run.Problem.Design.Tube.Length.Millimeters;
        double end = Math.Min(t[^1], AfterLit * run.Outcome.Time.Milliseconds);
        double top = 1.25 * gauge.Max();

        Plot plot = Style.NewPlot("The gas in the gap", "time since burn-through [ms]", "gap pressure above outside [kPa]", "station of the hot front [mm]");
        plot.Curve(t, gauge, Style.Blue, onRight: false);
        plot.Curve(t, front, Style.Red, onRight: true);
        plot.Level(length, Style.Red, onRight: true);
        plot.Note("upper nozzle", 0.99 * end, length, Style.Red, onRight: true, Alignment.LowerRight);
        if (run.TimeOf(GapEventKind.FrontAtLastVent) is { } arrival)
            plot.Moment(arrival.Milliseconds, "front at vents", 0.12 * top);
        if (run.TimeOf(GapEventKind.Lit) is { } lit)
            plot.Moment(lit.Milliseconds, "lit", 0.12 * top);
        if (run.TimeOf(GapEventKind.JointOpens) is { } opens)
            plot.Moment(opens.Milliseconds, "joint opens", 0.06 * top, alignment: Alignment.UpperRight);
        plot.Frame(end, top, 1.25 * length, Math.Min(0, 1.05 * gauge.Min()), 0);
        return plot;
    }
}
