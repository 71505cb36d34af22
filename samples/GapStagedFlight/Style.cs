using ScottPlot;
using ScottPlot.Plottables;

namespace GapStagedFlight;

/// <summary>One look for all figures: two colours that colour-blind readers can tell apart, labels on the curves, units on the axes.</summary>
internal static class Style
{
    public const int Width = 1000;
    public const int Height = 600;
    private const float Text = 20;

    /// <summary>Blue and vermilion of the palette of M. Okabe and K. Ito (2008), and a grey for what stands behind.</summary>
    public static readonly Color Blue = Color.FromHex("#0072B2");
    public static readonly Color Red = Color.FromHex("#D55E00");
    public static readonly Color Grey = Color.FromHex("#6b6b6b");

    public static Plot NewPlot(string title, string bottom, string left, string right)
    {
        var plot = new Plot();
        plot.Font.Set("DejaVu Sans");
        plot.Title(title, Text);
        plot.Axes.Title.Label.Bold = false;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.08);
        plot.Axes.Top.FrameLineStyle.Width = 0;
        Label(plot.Axes.Bottom, bottom, Colors.Black);
        Label(plot.Axes.Left, left, Blue);
        Label(plot.Axes.Right, right, Red);
        return plot;
    }

    public static Scatter Curve(this Plot plot, double[] x, double[] y, Color colour, bool onRight, LinePattern? pattern = null)
    {
        Scatter line = plot.Add.ScatterLine(x, y, colour);
        line.LineWidth = 3;
        line.LinePattern = pattern ?? LinePattern.Solid;
        if (onRight)
            line.Axes.YAxis = plot.Axes.Right;
        return line;
    }

    public static void Note(this Plot plot, string text, double x, double y, Color colour, bool onRight, Alignment alignment = Alignment.LowerLeft)
    {
        Text note = plot.Add.Text(text, x, y);
        note.LabelFontSize = Style.Text - 2;
        note.LabelFontColor = colour;
        note.LabelAlignment = alignment;
        note.LabelBackgroundColor = Colors.White;
        if (onRight)
            note.Axes.YAxis = plot.Axes.Right;
    }

    public static void Level(this Plot plot, double y, Color colour, bool onRight)
    {
        HorizontalLine line = plot.Add.HorizontalLine(y, 1.5f, colour, LinePattern.Dashed);
        if (onRight)
            line.Axes.YAxis = plot.Axes.Right;
    }

    public static void Moment(this Plot plot, double x, string text, double y, bool onRight = false, Alignment alignment = Alignment.UpperLeft)
    {
        plot.Add.VerticalLine(x, 1.2f, Grey, LinePattern.Dotted);
        plot.Note(" " + text + " ", x, y, Grey, onRight, alignment);
    }

    public static void Frame(this Plot plot, double right, double leftTop, double rightTop, double leftBottom = 0, double rightBottom = 0)
    {
        plot.Axes.SetLimits(0, right, leftBottom, leftTop);
        plot.Axes.SetLimitsY(rightBottom, rightTop, plot.Axes.Right);
    }

    private static void Label(IAxis axis, string text, Color colour)
    {
        axis.Label.Text = text;
        axis.Label.FontSize = Text;
        axis.Label.Bold = false;
        axis.Label.ForeColor = colour;
        axis.TickGenerator = new ScottPlot.TickGenerators.NumericAutomatic
        {
            TargetTickCount = 8,
            MinorTickGenerator = new ScottPlot.TickGenerators.EvenlySpacedMinorTickGenerator(0),
        };
        axis.TickLabelStyle.FontSize = Text - 2;
        axis.TickLabelStyle.ForeColor = colour;
    }
}
