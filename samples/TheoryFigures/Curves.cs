using Samples;
using ScottPlot;
using ScottPlot.Plottables;

namespace TheoryFigures;

/// <summary>Curves of functions with their labels, in colours by number.</summary>
internal static class Curves
{
    public static readonly Color[] Colours = [Figure.Blue, Figure.Red, Figure.Green, Figure.Grey];

    /// <summary>A curve of a function over an interval, labelled at a share of it.</summary>
    public static Plot Curve(this Plot plot, Func<double, double> f, double from, double to, string label, int colour, double labelAt = 0.5,
        bool dashed = false)
    {
        const int n = 400;
        double[] x = new double[n + 1], y = new double[n + 1];
        for (int i = 0; i <= n; i++)
        {
            x[i] = i < n ? from + (to - from) * i / n : to;
            y[i] = f(x[i]);
        }

        Scatter line = plot.Add.ScatterLine(x, y, Colours[colour]);
        line.LineWidth = 3;
        line.LinePattern = dashed ? LinePattern.Dashed : LinePattern.Solid;
        int at = (int)(labelAt * n);
        return plot.Note(" " + label, x[at], y[at], colour);
    }

    public static Plot Points(this Plot plot, double[] x, double[] y, string label, int colour)
    {
        Scatter points = plot.Add.ScatterPoints(x, y, Colours[colour]);
        points.MarkerSize = 10;
        points.MarkerShape = MarkerShape.OpenCircle;
        return plot.Note(" " + label, x[^1], y[^1], colour, Alignment.UpperLeft);
    }

    public static Plot Note(this Plot plot, string text, double x, double y, int colour, Alignment alignment = Alignment.LowerLeft)
    {
        plot.Note(text, x, y, Colours[colour], alignment);
        return plot;
    }

    public static Plot Limits(this Plot plot, double left, double right, double bottom, double top)
    {
        plot.Axes.SetLimits(left, right, bottom, top);
        return plot;
    }
}
