using ScottPlot;
using ScottPlot.Plottables;

namespace TheoryFigures;

/// <summary>
/// One look for all figures: colours that colour-blind readers can tell apart (palette of M. Okabe and K. Ito, 2008),
/// labels on the curves.
/// </summary>
internal static class Sheet
{
    public const int Width = 900;
    public const int Height = 540;
    private const float Text = 19;

    public static readonly Color[] Colours = [Color.FromHex("#0072B2"), Color.FromHex("#D55E00"), Color.FromHex("#009E73"),
        Color.FromHex("#6b6b6b")];

    public static Plot New(string title, string bottom, string left)
    {
        var plot = new Plot();
        plot.Title(title, Text + 1);
        plot.Axes.Title.Label.Bold = false;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.08);
        plot.Axes.Top.FrameLineStyle.Width = 0;
        plot.Axes.Right.FrameLineStyle.Width = 0;
        Name(plot.Axes.Bottom, bottom);
        Name(plot.Axes.Left, left);
        return plot;
    }

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
        plot.Note(" " + label, x[at], y[at], colour);
        return plot;
    }

    public static Plot Points(this Plot plot, double[] x, double[] y, string label, int colour)
    {
        Scatter points = plot.Add.ScatterPoints(x, y, Colours[colour]);
        points.MarkerSize = 10;
        points.MarkerShape = MarkerShape.OpenCircle;
        plot.Note(" " + label, x[^1], y[^1], colour, Alignment.UpperLeft);
        return plot;
    }

    public static Plot Note(this Plot plot, string text, double x, double y, int colour, Alignment alignment = Alignment.LowerLeft)
    {
        ScottPlot.Plottables.Text note = plot.Add.Text(text, x, y);
        note.LabelFontSize = Text - 3;
        note.LabelFontColor = Colours[colour];
        note.LabelAlignment = alignment;
        return plot;
    }

    public static Plot Limits(this Plot plot, double left, double right, double bottom, double top)
    {
        plot.Axes.SetLimits(left, right, bottom, top);
        return plot;
    }

    private static void Name(IAxis axis, string text)
    {
        axis.Label.Text = text;
        axis.Label.FontSize = Text;
        axis.Label.Bold = false;
        axis.TickLabelStyle.FontSize = Text - 2;
    }
}
