using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>
/// Windows of vent area against gap length, with what common practice says beside them.
/// </summary>
internal static class MapFigure
{
    /// <summary>Common practice, no source: a vent area like one 6 mm hole, gaps to about 250 mm.</summary>
    private const double PracticeArea = 28.3, PracticeGap = 250;

    public static Plot Draw(SweepLine<WindowResult> nominal, SweepLine<WindowResult> assured)
    {
        Plot plot = Figure.New("Vent areas that light the upper motor (18 mm bore, 20 N joint, invented motor)",
            "gap between the motors [mm]", "total vent area [mm2]");
        Bars(plot, nominal, Figure.Blue, 0.32, "lights at the nominal numbers");
        Bars(plot, assured, Figure.Orange, 0.16, "lights in half of the cases or more, judged inputs uncertain");
        double[] from40 = [nominal.Axis.Low, PracticeGap], level = [Log(PracticeArea), Log(PracticeArea)];
        Scatter practice = plot.Add.ScatterLine(from40, level, Figure.Red);
        practice.LineWidth = 3;
        practice.LinePattern = LinePattern.Dashed;
        practice.LegendText = "common practice: the area of one 6 mm hole, to about 250 mm";
        Axis areas = nominal.Results[0].Axis;
        double[] ticks = [5, 10, 20, 50, 100, 200, 500];
        plot.Axes.Left.SetTicks([.. ticks.Select(Log)], [.. ticks.Select(t => $"{t:F0}")]);
        double half = 0.5 * (nominal.Axis.Values[1] - nominal.Axis.Values[0]);
        plot.Axes.SetLimits(nominal.Axis.Low - half, nominal.Axis.High + half, Log(areas.Low) - 0.45, Log(areas.High) + 0.05);
        plot.Legend(Alignment.LowerLeft);
        return plot;
    }

    private static void Bars(Plot plot, SweepLine<WindowResult> line, Color colour, double share, string label)
    {
        double half = share * (line.Axis.Values[1] - line.Axis.Values[0]);
        bool named = false;
        for (int i = 0; i < line.Results.Length; i++)
        {
            foreach (Window window in line.Results[i].Windows)
            {
                double x = line.Axis.Values[i];
                Rectangle bar = plot.Add.Rectangle(x - half, x + half, Log(window.Low), Log(window.High));
                (bar.FillStyle.Color, bar.LineStyle.Width) = (colour.WithAlpha(0.75), 0);
                if (!named)
                    bar.LegendText = label;
                named = true;
            }
        }

        if (!named)
            plot.Add.Rectangle(-1000, -1000, -1000, -1000).LegendText = label + ": nowhere";
    }

    private static double Log(double area) => Math.Log10(area);
}
