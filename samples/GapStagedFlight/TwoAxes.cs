using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace GapStagedFlight;

/// <summary>Figures with a blue axis on the left and a red one on the right.</summary>
internal static class TwoAxes
{
    public static Plot New(string title, string bottom, string left, string right)
    {
        Plot plot = Figure.New(title, bottom, left);
        plot.Axes.Right.FrameLineStyle.Width = plot.Axes.Left.FrameLineStyle.Width;
        Figure.Name(plot.Axes.Left, left, Figure.Blue);
        Figure.Name(plot.Axes.Right, right, Figure.Red);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Bottom, plot.Axes.Left, plot.Axes.Right })
            axis.TicksWhere(_ => true);
        return plot;
    }

    public static void Curve(this Plot plot, double[] x, double[] y, bool onRight = false, bool dotted = false)
    {
        Scatter line = plot.Add.ScatterLine(x, y, onRight ? Figure.Red : Figure.Blue);
        line.LineWidth = 3;
        line.LinePattern = dotted ? LinePattern.Dotted : LinePattern.Solid;
        if (onRight)
            line.Axes.YAxis = plot.Axes.Right;
    }

    /// <summary>Words beside a point.</summary>
    public static void Beside(this Plot plot, string text, double x, double y, Color colour, Alignment alignment, bool onRight = false)
    {
        Text note = plot.Note(text, x, y, colour, alignment);
        note.OffsetX = alignment is Alignment.UpperLeft or Alignment.MiddleLeft or Alignment.LowerLeft ? 7 : -7;
        if (onRight)
            note.Axes.YAxis = plot.Axes.Right;
    }

    /// <summary>A dashed level, with words above it at a place.</summary>
    public static void Level(this Plot plot, double y, string text, double x, Alignment alignment, Color colour, bool onRight = false)
    {
        HorizontalLine line = plot.Add.HorizontalLine(y, 1.5f, colour, LinePattern.Dashed);
        if (onRight)
            line.Axes.YAxis = plot.Axes.Right;
        plot.Beside(text, x, y, colour, alignment, onRight);
    }

    /// <summary>A moment: a thin upright line from the ground to its words.</summary>
    public static void Moment(this Plot plot, double x, string text, double bottom, double top, Alignment alignment = Alignment.UpperLeft)
    {
        LinePlot line = plot.Add.Line(x, bottom, x, top);
        line.LineWidth = 1.2f;
        line.LineColor = Figure.Grey;
        line.LinePattern = LinePattern.Dotted;
        line.MarkerSize = 0;
        plot.Beside(text, x, top, Figure.Grey, alignment);
    }

    /// <summary>Limits of all axes.</summary>
    public static void Frame(this Plot plot, double right, (double Bottom, double Top) left, (double Bottom, double Top) rightSide)
    {
        plot.Axes.SetLimits(0, right, left.Bottom, left.Top);
        plot.Axes.SetLimitsY(rightSide.Bottom, rightSide.Top, plot.Axes.Right);
    }

    /// <summary>Shows the ticks of an axis only where they mean something.</summary>
    public static void TicksWhere(this IAxis axis, Func<double, bool> meaningful) => axis.TickGenerator = new NumericAutomatic
    {
        TargetTickCount = 8,
        MinorTickGenerator = new EvenlySpacedMinorTickGenerator(0),
        LabelFormatter = v => meaningful(v) ? v.ToString("0.###", null) : "",
    };
}
