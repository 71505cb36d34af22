using ScottPlot;

namespace Samples;

/// <summary>
/// One look for all figures: colours that colour-blind readers can tell apart (palette of M. Okabe and K. Ito, 2008),
/// labels on the curves, units on the axes, no frame where there is no axis.
/// </summary>
internal static class Figure
{
    public const int Width = 900, Height = 540;

    /// <summary>Size of the text on axes; titles are a little larger, ticks and notes a little smaller.</summary>
    public const float Text = 19;

    private const string Font = "DejaVu Sans";

    public static readonly Color Blue = Color.FromHex("#0072B2"), Red = Color.FromHex("#D55E00"), Green = Color.FromHex("#009E73"),
        Grey = Color.FromHex("#6b6b6b"), Orange = Color.FromHex("#E69F00"), Sky = Color.FromHex("#56B4E9"), Yellow = Color.FromHex("#F0E442");

    public static Plot New(string title, string bottom, string left)
    {
        var plot = new Plot();
        plot.Font.Set(Font);
        plot.Title(title, Text + 1);
        plot.Axes.Title.Label.Bold = false;
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.08);
        plot.Axes.Top.FrameLineStyle.Width = 0;
        plot.Axes.Right.FrameLineStyle.Width = 0;
        Name(plot.Axes.Bottom, bottom, Colors.Black);
        Name(plot.Axes.Left, left, Colors.Black);
        return plot;
    }

    /// <summary>Names an axis, in a colour that its curves share where there are two.</summary>
    public static void Name(IAxis axis, string text, Color colour)
    {
        axis.Label.Text = text;
        axis.Label.FontSize = Text;
        axis.Label.Bold = false;
        axis.Label.ForeColor = colour;
        axis.TickLabelStyle.FontSize = Text - 2;
        axis.TickLabelStyle.ForeColor = colour;
    }

    /// <summary>Words at a point; they have no ground, so that nothing behind them is cut.</summary>
    public static ScottPlot.Plottables.Text Note(this Plot plot, string text, double x, double y, Color colour,
        Alignment alignment = Alignment.LowerLeft)
    {
        ScottPlot.Plottables.Text note = plot.Add.Text(text, x, y);
        note.LabelFontSize = Text - 3;
        note.LabelFontColor = colour;
        note.LabelAlignment = alignment;
        return note;
    }

    /// <summary>The look of words at a point, to measure them by.</summary>
    public static LabelStyle NoteStyle(string text) => new() { Text = text, FontName = Font, FontSize = Text - 3 };

    /// <summary>Makes a title smaller until it fits the figure.</summary>
    public static void FitTitle(this Plot plot)
    {
        using Paint paint = Paint.NewDisposablePaint();
        LabelStyle title = plot.Axes.Title.Label;
        while (title.FontSize > Text - 5 && title.Measure(title.Text, paint).Width > Width - 40)
            title.FontSize--;
    }

    /// <summary>Text of at most so many characters, cut with an ellipsis.</summary>
    public static string Short(string text, int characters) =>
        text.Length <= characters ? text : string.Concat(text.AsSpan(0, Math.Max(0, characters - 1)).TrimEnd(), "\u2026");

    /// <summary>The legend, in the size of notes.</summary>
    public static void Legend(this Plot plot, Alignment at) => plot.ShowLegend(at).FontSize = Text - 3;

    /// <summary>
    /// A figure as SVG that scales with its frame, and whose words stay without serifs where the font is not installed.
    /// </summary>
    public static string Svg(this Plot plot, int height = Height)
    {
        string size = FormattableString.Invariant($"width=\"{Width}\" height=\"{height}\"");
        return plot.GetSvgXml(Width, height)
            .Replace(size + ">", FormattableString.Invariant($"{size} viewBox=\"0 0 {Width} {height}\">"), StringComparison.Ordinal)
            .Replace($"font-family=\"{Font}\"", $"font-family=\"{Font}, Verdana, sans-serif\"", StringComparison.Ordinal);
    }

    /// <summary>Writes a figure as SVG and as PNG and gives its path without the ending.</summary>
    public static string Save(this Plot plot, string folder, string name, int height = Height)
    {
        string path = Path.Combine(folder, name);
        File.WriteAllText(path + ".svg", plot.Svg(height));
        plot.SavePng(path + ".png", Width, height);
        return path;
    }
}
