using ScottPlot;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using UnitsNet;

namespace GapStagedFlight;

/// <summary>The race: grain surface temperature against joint travel, for the vents as built and for the smallest that light.</summary>
internal static class RaceFigure
{
    public static Plot Draw(GapReview gap)
    {
        GapRun built = gap.Run;
        GapDesign design = built.Problem.Design;
        double ignition = design.Grain.IgnitionTemperature.Kelvins, engagement = design.Joint.Engagement.Millimeters;
        Plot plot = Style.NewPlot(
            "The ignition race (solid: vents as built)", "time since burn-through [ms]", "grain surface [K]", "joint travel [mm]");
        double end = Course(plot, built, LinePattern.Solid);
        if (gap.Advice.Widest is { } window)
        {
            GapDesign least = design with { Vents = [gap.Advice.Layout.VentOf(design.Tube, window.Least)] };
            end = Math.Max(end, Course(plot, (built.Problem with { Design = least }).Solve(options: built.Options), LinePattern.Dotted));
            plot.Axes.Title.Label.Text = $"The ignition race (solid: vents as built, {design.TotalVentArea.SquareMillimeters:F0} mm\u00b2; dotted: smallest that lights, {window.Least.SquareMillimeters:F0} mm\u00b2)";
        }

        plot.Level(ignition, Style.Blue, onRight: false);
        plot.Note("ignition temperature", 0.01 * end, ignition, Style.Blue, onRight: false);
        plot.Level(engagement, Style.Red, onRight: true);
        plot.Note("joint opens", 0.99 * end, engagement, Style.Red, onRight: true, Alignment.LowerRight);
        if (built.TimeOf(GapEventKind.JointMoves) is null)
            plot.Note("as built, the joint stays", 0.99 * end, 0.01 * engagement, Style.Red, onRight: true, Alignment.LowerRight);
        plot.Frame(end, 1.15 * Math.Max(ignition, built.PeakGrainSurface.Kelvins), 2.4 * engagement, 250, 0);
        return plot;
    }

    private static double Course(Plot plot, GapRun run, LinePattern pattern)
    {
        GapColumns c = run.Sample(Duration.FromMicroseconds(50));
        double[] t = [.. c.Time_s.ToArray().Select(s => s * 1e3)];
        plot.Curve(t, c.GrainSurface_K.ToArray(), Style.Blue, onRight: false, pattern);
        plot.Curve(t, [.. c.JointTravel_m.ToArray().Select(x => x * 1e3)], Style.Red, onRight: true, pattern);
        return Math.Min(t[^1], 2 * run.Outcome.Time.Milliseconds);
    }
}
