using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Sizing;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>
/// Both edges of the vent areas that light against gap length, the area to drill, and what common practice drills.
/// </summary>
internal static class MapFigure
{
    /// <summary>Common practice, no source: a vent area like one 6 mm hole, gaps to about 250 mm.</summary>
    private const double PracticeArea = 28.3, PracticeGap = 250;

    public static Plot Draw(SweepLine<WindowResult> nominal, SweepLine<WindowResult> assured)
    {
        Plot plot = Figure.New("Vent areas that light the upper motor (18 mm bore, 20 N joint, invented motor)",
            "gap between the motors [mm]", "total vent area [mm2]");
        (double X, Window Window)[] lights = Widest(nominal), inHalf = Widest(assured);
        FillY band = plot.Add.FillY(Xs(lights), Logs(lights, w => w.Low), Logs(lights, w => w.High));
        (band.FillColor, band.LineWidth, band.MarkerSize, band.LegendText) = (Figure.Blue.WithAlpha(0.15), 0, 0, "");
        plot.Line(lights, w => w.Low, Figure.Blue, LinePattern.Solid).LegendText = "edges of what lights at the nominal numbers";
        plot.Line(lights, w => w.High, Figure.Blue, LinePattern.Solid);
        plot.Line(inHalf, w => w.Low, Figure.Orange, LinePattern.Dashed).LegendText =
            "edges of what lights in half of the cases, judged inputs uncertain";
        plot.Line(inHalf, w => w.High, Figure.Orange, LinePattern.Dashed);
        plot.Line(lights, w => Math.Min(VentAdvice.Margin * w.Low, w.High), Figure.Green, LinePattern.Solid).LegendText =
            FormattableString.Invariant($"area to drill: the lower edge times {VentAdvice.Margin}");
        double[] customary = [nominal.Axis.Low, PracticeGap], level = [Log(PracticeArea), Log(PracticeArea)];
        Scatter practice = plot.Add.ScatterLine(customary, level, Figure.Red);
        practice.LineWidth = 4;
        practice.LinePattern = LinePattern.Dotted;
        practice.LegendText = "common practice: the area of one 6 mm hole, to about 250 mm";
        if (lights.Length > 0)
            Words(plot, lights);
        Axis areas = nominal.Results[0].Axis;
        double[] ticks = [5, 10, 20, 50, 100, 200, 500, 1000];
        plot.Axes.Left.SetTicks([.. ticks.Select(Log)], [.. ticks.Select(t => $"{t:F0}")]);
        plot.Axes.SetLimits(nominal.Axis.Low - 15, nominal.Axis.High + 15, Log(areas.Low) - 0.25, Log(areas.High) + 0.05);
        plot.Legend(Alignment.LowerRight);
        return plot;
    }

    /// <summary>What is inside the window and on either side of it.</summary>
    private static void Words(Plot plot, (double X, Window Window)[] lights)
    {
        (double x, Window window) = lights[lights.Length / 2];
        plot.Note("too cool", x, Log(1.25 * window.High), Figure.Grey, Alignment.LowerCenter);
        plot.Note("lights", x, 0.5 * (Log(window.Low) + Log(window.High)), Figure.Blue, Alignment.MiddleCenter);
        plot.Note("pushed apart", x, Log(0.7 * window.Low), Figure.Grey, Alignment.UpperCenter);
    }

    /// <summary>The widest window of each length that has one.</summary>
    private static (double X, Window Window)[] Widest(SweepLine<WindowResult> line) =>
        [.. line.Axis.Values.Zip(line.Results).Where(p => p.Second.Widest is not null).Select(p => (p.First, p.Second.Widest!))];

    private static Scatter Line(this Plot plot, (double X, Window Window)[] points, Func<Window, double> edge, Color colour,
        LinePattern pattern)
    {
        Scatter line = plot.Add.ScatterLine(Xs(points), Logs(points, edge), colour);
        (line.LineWidth, line.LinePattern) = (3, pattern);
        return line;
    }

    private static double[] Xs((double X, Window Window)[] points) => [.. points.Select(p => p.X)];

    private static double[] Logs((double X, Window Window)[] points, Func<Window, double> edge) =>
        [.. points.Select(p => Log(edge(p.Window)))];

    private static double Log(double area) => Math.Log10(area);
}
