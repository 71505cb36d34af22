using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using Staging.Core.Sizing;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>The odds over gap length and vent area: the darker, the more of the cases light; words for what fails on either side.</summary>
internal static class OddsFigure
{
    /// <summary>Cells overlap a little, so that nothing shines through between them.</summary>
    private const double Seamless = 1.15;

    private static readonly (double From, string Label)[] Shades =
        [(0.9, "90 % or more"), (0.7, "70 to 90"), (0.5, "50 to 70"), (0.3, "30 to 50"), (0.1, "10 to 30"), (0, "less")];

    public static Plot Draw(OddsMap map)
    {
        Plot plot = Figure.New($"Share of cases that light, {map.Cases} a cell (18 mm bore, all judged inputs uncertain)",
            "gap between the motors [mm]", "total vent area [mm2]");
        plot.HideGrid();
        Axis gaps = map.Cells.Across, areas = map.Cells.Up;
        double dx = 0.5 * (gaps.Values[1] - gaps.Values[0]), dy = 0.5 * Math.Log10(areas.Values[1] / areas.Values[0]);
        for (int up = 0; up < areas.Values.Length; up++)
        {
            for (int across = 0; across < gaps.Values.Length; across++)
            {
                double x = gaps.Values[across], y = Math.Log10(areas.Values[up]);
                Rectangle cell = plot.Add.Rectangle(x - dx, x + Seamless * dx, y - dy, y + Seamless * dy);
                (cell.FillStyle.Color, cell.LineStyle.Width) = (Shade(map.At(across, up).Odds.Estimate), 0);
            }
        }

        foreach ((double from, string label) in Shades)
            plot.Legend.ManualItems.Add(new LegendItem { LabelText = label, FillColor = Shade(from), LabelFontSize = Figure.Text - 4 });
        double middle = gaps.Values[gaps.Values.Length / 2];
        plot.Note("parted first", middle, Math.Log10(areas.Low * 1.3), Figure.Grey, Alignment.MiddleCenter);
        plot.Note("stays cold", middle, Math.Log10(areas.High / 1.3), Figure.Grey, Alignment.MiddleCenter);
        double[] ticks = [.. new double[] { 5, 10, 20, 50, 100, 200, 500, 1000 }.Where(t => t >= areas.Low && t <= areas.High)];
        plot.Axes.Left.SetTicks([.. ticks.Select(Math.Log10)], [.. ticks.Select(t => $"{t:F0}")]);
        plot.Axes.SetLimits(gaps.Low - dx, gaps.High + dx, Math.Log10(areas.Low) - dy, Math.Log10(areas.High) + dy);
        plot.ShowLegend(Edge.Bottom);
        return plot;
    }

    /// <summary>One hue, darker in six steps.</summary>
    private static Color Shade(double odds)
    {
        int step = Shades.Length - 1 - Array.FindIndex(Shades, s => odds >= s.From);
        return Colors.White.MixedWith(Figure.Blue, 0.05 + 0.18 * step);
    }
}
