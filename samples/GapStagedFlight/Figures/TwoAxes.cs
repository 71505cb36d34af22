using System.Globalization;
using Samples;
using ScottPlot;
using ScottPlot.Plottables;
using ScottPlot.TickGenerators;

namespace GapStagedFlight.Figures;

/// <summary>A figure with a blue axis on the left and a red one on the right, and words that find their own places.</summary>
internal sealed class TwoAxes
{
    private const double ThinLine = 0.3;
    private readonly Plot plot;
    private readonly List<Action<LabelLayout>> obstacles = [], words = [];
    private double bottom;
    private int moments;

    public TwoAxes(string title, string below, string left, string right)
    {
        plot = Figure.New(title, below, left);
        plot.FitTitle();
        plot.Axes.Right.FrameLineStyle.Width = plot.Axes.Left.FrameLineStyle.Width;
        Figure.Name(plot.Axes.Left, left, Figure.Blue);
        Figure.Name(plot.Axes.Right, right, Figure.Red);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Bottom, plot.Axes.Left, plot.Axes.Right })
            Ticks(axis, _ => true);
    }

    /// <summary>A curve, with its name beside it near a share of its length where it has one.</summary>
    public void Curve(double[] x, double[] y, bool onRight = false, string? name = null, double near = 0.5, bool dotted = false, Color? colour = null)
    {
        Color ink = colour ?? (onRight ? Figure.Red : Figure.Blue);
        IYAxis axis = Axis(onRight);
        Scatter line = plot.Add.ScatterLine(x, y, ink);
        line.LineWidth = 3;
        line.LinePattern = dotted ? LinePattern.Dotted : LinePattern.Solid;
        line.Axes.YAxis = axis;
        obstacles.Add(layout => layout.Avoid(Pixels(x, y, axis)));
        if (name is not null)
            words.Add(layout => layout.Place(name, ink, size => Places.Beside(Pixels(x, y, axis), near, size)));
    }

    /// <summary>A dashed level with words above or below it.</summary>
    public void Level(double y, string text, Color colour, bool onRight = false, bool fromRight = false)
    {
        IYAxis axis = Axis(onRight);
        plot.Add.HorizontalLine(y, 1.5f, colour, LinePattern.Dashed).Axes.YAxis = axis;
        obstacles.Add(layout => layout.Avoid([new Pixel(layout.Inside.Left, Height(y, axis)), new Pixel(layout.Inside.Right, Height(y, axis))]));
        words.Add(layout => layout.Place(text, colour, size => Places.Along(layout.Inside, Height(y, axis), Height(y, axis), fromRight, size)));
    }

    /// <summary>A band across the figure with words above or below it.</summary>
    public void Band(double low, double high, string text, Color colour, bool onRight = false)
    {
        IYAxis axis = Axis(onRight);
        VerticalSpan band = plot.Add.VerticalSpan(low, high, colour.WithAlpha(0.3));
        band.LineWidth = 0;
        band.Axes.YAxis = axis;
        foreach (double edge in new[] { low, high })
            obstacles.Add(layout => layout.Avoid([new Pixel(layout.Inside.Left, Height(edge, axis)), new Pixel(layout.Inside.Right, Height(edge, axis))], ThinLine));
        words.Add(layout => layout.Place(text, Figure.Grey, size => Places.Along(layout.Inside, Height(high, axis), Height(low, axis), true, size)));
    }

    /// <summary>The space between two curves, with its name.</summary>
    public void Between(double[] x, double[] low, double[] high, Color colour, bool onRight = false)
    {
        FillY space = plot.Add.FillY(x, low, high);
        space.FillColor = colour.WithAlpha(0.25);
        space.LineWidth = 0;
        space.MarkerStyle.IsVisible = false;
        space.Axes.YAxis = Axis(onRight);
    }

    /// <summary>A moment: a thin upright line from the ground to its words.</summary>
    public void Moment(double x, string text) => words.Insert(moments++, layout =>
    {
        float at = plot.GetPixel(new Coordinates(x, bottom)).X;
        PixelRect? place = layout.Place(text, Figure.Grey, size => Places.BesideUpright(layout.Inside, at, size),
            words => new PixelRect(new Pixel(at, words.Top), new PixelSize(0, layout.Inside.Bottom - words.Top)));
        LinePlot line = plot.Add.Line(x, bottom, x, plot.GetCoordinates(new Pixel(at, place?.Top ?? layout.Inside.Top), plot.Axes.Bottom, plot.Axes.Left).Y);
        line.LineWidth = 1.2f;
        line.LineColor = Figure.Grey;
        line.LinePattern = LinePattern.Dotted;
        line.MarkerSize = 0;
        layout.Avoid([new Pixel(at, place?.Top ?? layout.Inside.Top), new Pixel(at, layout.Inside.Bottom)], ThinLine);
    });

    /// <summary>Words about the whole figure, anywhere.</summary>
    public void Remark(string text) => words.Add(layout => layout.Place(text, Figure.Grey, size => Places.Anywhere(layout.Inside, size)));

    /// <summary>Sets the limits of all axes, places all words, and gives the figure.</summary>
    public DrawnFigure Finish(double right, (double Bottom, double Top) left, (double Bottom, double Top) rightSide)
    {
        bottom = left.Bottom;
        plot.Axes.SetLimits(0, right, left.Bottom, left.Top);
        plot.Axes.SetLimitsY(rightSide.Bottom, rightSide.Top, plot.Axes.Right);
        plot.RenderInMemory(Figure.Width, Figure.Height);
        foreach (IAxis axis in new IAxis[] { plot.Axes.Left, plot.Axes.Right })
            axis.TickGenerator = new NumericManual([.. axis.TickGenerator.Ticks.Where(t => t.Label.Length > 0)]);
        using var layout = new LabelLayout(plot);
        obstacles.ForEach(o => o(layout));
        words.ForEach(w => w(layout));
        return new DrawnFigure(plot, [.. layout.LeftOut]);
    }

    /// <summary>Shows the ticks of an axis only where they mean something.</summary>
    public void LeftTicks(Func<double, bool> meaningful) => Ticks(plot.Axes.Left, meaningful);

    /// <summary>Shows the ticks of an axis only where they mean something.</summary>
    public void RightTicks(Func<double, bool> meaningful) => Ticks(plot.Axes.Right, meaningful);

    private static void Ticks(IAxis axis, Func<double, bool> meaningful) => axis.TickGenerator = new NumericAutomatic
    {
        TargetTickCount = 8,
        MinorTickGenerator = new EvenlySpacedMinorTickGenerator(0),
        LabelFormatter = v => meaningful(v) ? v.ToString("0.###", CultureInfo.InvariantCulture) : "",
    };

    private IYAxis Axis(bool onRight) => onRight ? plot.Axes.Right : plot.Axes.Left;

    private float Height(double y, IYAxis axis) => plot.GetPixel(new Coordinates(0, y), plot.Axes.Bottom, axis).Y;

    private Pixel[] Pixels(double[] x, double[] y, IYAxis axis) =>
        [.. x.Zip(y, (a, b) => plot.GetPixel(new Coordinates(a, b), plot.Axes.Bottom, axis))];
}
