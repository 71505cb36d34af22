using System.Globalization;
using Samples;
using ScottPlot;
using ScottPlot.Plottables;

namespace TheoryFigures;

internal static class ModelFigures
{
    public static IEnumerable<(string Name, Plot Plot)> All()
    {
        yield return ("models-arrival", Map("Front at the last vent: one-dimensional model against two-zone model", s => s.Arrival));
        yield return ("models-arrival-still", Map("The same with a thin front, and no exchange with the dead end", s => s.ArrivalOfStill));
        yield return ("models-peak", Map("Peak gauge pressure: one-dimensional model against two-zone model", s => s.Peak));
    }

    private static Plot Map(string title, Func<ModelMap.Spot, double?> difference)
    {
        Plot plot = Figure.New(title, "length of the gap [mm]", "vent area [holes of 6 mm]");
        foreach (ModelMap.Spot spot in ModelMap.Spots)
        {
            double x = Array.IndexOf(ModelMap.Lengths_mm, spot.Length_mm), y = Array.IndexOf(ModelMap.Areas, spot.Area);
            double? d = difference(spot);
            bool apart = ModelMap.IsApart(d);
            Rectangle box = plot.Add.Rectangle(x - 0.47, x + 0.47, y - 0.45, y + 0.45);
            box.FillColor = apart ? Curves.Colours[1].WithAlpha(0.25) : Curves.Colours[0].WithAlpha(0.10);
            box.LineWidth = 0;
            string text = d is { } part
                ? Math.Round(100 * part, 1).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture) + " %"
                : "no arrival";
            plot.Note(text, x, y, apart ? 1 : 3, Alignment.MiddleCenter);
        }

        plot.Axes.Bottom.SetTicks([0, 1, 2, 3, 4, 5], Ticks(ModelMap.Lengths_mm));
        plot.Axes.Left.SetTicks([0, 1, 2, 3, 4, 5], Ticks(ModelMap.Areas));
        plot.HideGrid();
        return plot.Limits(-0.6, 5.6, -0.6, 5.6);
    }

    private static string[] Ticks(double[] values) => [.. values.Select(v => v.ToString(CultureInfo.InvariantCulture))];
}
