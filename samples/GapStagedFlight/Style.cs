using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace GapStagedFlight;

/// <summary>
/// One look for all figures: two colours that colour-blind readers can tell apart, labels on the curves, units on the
/// axes.
/// </summary>
internal static class Style
{
    public const int Width = 1000;
    public const int Height = 600;
    private const float Text = 20;

    /// <summary>
    /// Blue and vermilion of the palette of M. Okabe and K. Ito (2008), and a grey for what stands behind.
    /// </summary>
    public static readonly Color Blue = Color.FromHex("#0072B2");
    public static readonly Color Red = Color.FromHex("#D55E00");
    public static readonly Color Grey = Color.FromHex("#5c5c5c");

    public static Plot NewPlot(string title, string bottom, string left, string right)
    {
        var plot = new Plot();
        plot.Font.Set("DejaVu Sans");
        plot.Title(title, Text);
        plot.Axes.Title.Label.Bold = false;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.08);
        plot.Axes.Top.FrameLineStyle.Width = 0;
        Label(plot.Axes.Bottom, bottom, Colors.Black, _ => true);
        Label(plot.Axes.Left, left, Blue, _ => true);
        Label(plot.Axes.Right, right, Red, _ => true);
        return plot;
    }

    public static void Curve(this Plot plot, double[] x, double[] y, Color colour, bool onRight = false, LinePattern? pattern = null)
    {
        Scatter line = plot.Add.ScatterLine(x, y, colour);
        line.LineWidth = 3;
        line.LinePattern = pattern ?? LinePattern.Solid;
        if (onRight)
            line.Axes.YAxis = plot.Axes.Right;
    }

    /// <summary>Words at a point; left without a ground, so that nothing behind them is cut.</summary>
    public static void Note(this Plot plot, string text, double x, double y, Color colour, Alignment alignment, bool onRight = false,
        bool bold = false)
    {
        Text note = plot.Add.Text(text, x, y);
        note.LabelFontSize = Style.Text - 2;
        note.LabelFontColor = colour;
        note.LabelAlignment = alignment;
        note.LabelBold = bold;
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
        plot.Note(text, x, y, colour, alignment, onRight);
    }

    /// <summary>A moment: a thin upright line from the ground to its words.</summary>
    public static void Moment(this Plot plot, double x, string text, double bottom, double top, Alignment alignment = Alignment.UpperLeft)
    {
        ScottPlot.Plottables.LinePlot line = plot.Add.Line(x, bottom, x, top);
        line.LineWidth = 1.2f;
        line.LineColor = Grey;
        line.LinePattern = LinePattern.Dotted;
        line.MarkerSize = 0;
        plot.Note(text, x, top, Grey, alignment);
    }

    /// <summary>Limits of all axes; the ticks of either side only where they mean something.</summary>
    public static void Frame(this Plot plot, double right, (double Bottom, double Top) left, (double Bottom, double Top) rightSide)
    {
        plot.Axes.SetLimits(0, right, left.Bottom, left.Top);
        plot.Axes.SetLimitsY(rightSide.Bottom, rightSide.Top, plot.Axes.Right);
    }

    /// <summary>Shows the ticks of an axis only where they mean something.</summary>
    public static void TicksWhere(this IAxis axis, Func<double, bool> meaningful) => axis.TickGenerator = Ticks(meaningful);

    private static void Label(IAxis axis, string text, Color colour, Func<double, bool> meaningful)
    {
        axis.Label.Text = text;
        axis.Label.FontSize = Text;
        axis.Label.Bold = false;
        axis.Label.ForeColor = colour;
        axis.TickGenerator = Ticks(meaningful);
        axis.TickLabelStyle.FontSize = Text - 2;
        axis.TickLabelStyle.ForeColor = colour;
    }

    private static NumericAutomatic Ticks(Func<double, bool> meaningful) => new()
    {
        TargetTickCount = 8,
        MinorTickGenerator = new EvenlySpacedMinorTickGenerator(0),
        LabelFormatter = v => meaningful(v) ? v.ToString("0.###", null) : "",
    };
}
