using Samples;
using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>Gap pressure and front station against time.</summary>
internal static class GapFigure
{
    /// <summary>How much of the run is shown, as a multiple of the time that decided it.</summary>
    private const double PastOutcome = 2;

    public static Plot Draw(GapReview gap)
    {
        GapRun run = gap.Run;
        GapColumns c = run.Sample(Duration.FromMicroseconds(50));
        double outside = run.Problem.Surroundings.Pressure.Pascals, length = run.Problem.Design.Tube.Length.Millimeters;
        double[] t = [.. c.Time_s.ToArray().Select(s => s * 1e3)];
        double[] gauge = [.. c[GapChannel.GapPressure].ToArray().Select(p => (p - outside) / 1e3)];
        double[] front = [.. c[GapChannel.Front].ToArray().Select(x => x * 1e3)];
        double end = Math.Min(t[^1], PastOutcome * run.Outcome.Time.Milliseconds);
        double top = 1.3 * gauge.Max(), bottom = Math.Min(0, 1.05 * gauge.Min());

        Plot plot = TwoAxes.New("Gas in the gap: its pressure, and the hot front", "time since burn-through [ms]",
            "gap pressure above outside [kPa]", "station of the hot front [mm]");
        plot.Curve(t, gauge);
        plot.Curve(t, front, onRight: true);
        plot.Level(length, "upper nozzle", end, Alignment.LowerRight, Figure.Red, onRight: true);
        int far = Array.FindIndex(front, x => x > 0.97 * front.Max());
        plot.Beside("hot front", t[far], front[far], Figure.Red, Alignment.UpperLeft, onRight: true);
        int late = (int)(0.5 * Math.Min(end / t[^1], 1) * (t.Length - 1));
        plot.Beside("pressure", t[late], gauge[late], Figure.Blue, Alignment.LowerLeft);
        foreach ((GapEventKind kind, string name, Alignment side, double height) in new[]
        {
            (GapEventKind.FrontAtLastVent, "front at vents", Alignment.UpperLeft, 0.985),
            (GapEventKind.Lit, "grain lit", Alignment.UpperRight, 0.985),
            (GapEventKind.JointOpens, "joint opens", Alignment.UpperRight, 0.93),
        })
        {
            if (run.TimeOf(kind) is { } moment && moment.Milliseconds <= end)
                plot.Moment(moment.Milliseconds, $"{name}, {moment.Milliseconds:F1} ms", bottom, height * top, side);
        }

        plot.Frame(end, (bottom, top), (0, 1.25 * length));
        return plot;
    }
}
