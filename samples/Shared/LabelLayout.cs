using ScottPlot;

namespace Samples;

/// <summary>
/// Places words on a figure one after the other: measured, inside the axes, on no other words, and on as few lines as
/// can be. What finds no place is left out and listed.
/// </summary>
internal sealed class LabelLayout : IDisposable
{
    private const float Edge = 4, Near = 3, PointEvery = 3;

    /// <summary>Room between words on one line, so that they do not read as one sentence.</summary>
    private const float Apart = 14;

    /// <summary>How much worse it is to cross words than to lie on a point of a line.</summary>
    private const double CrossedWords = 10;

    private readonly Plot plot;
    private readonly Paint paint = Paint.NewDisposablePaint();
    private readonly Dictionary<(int X, int Y), double> lines = [];
    private readonly List<(string Text, PixelRect Place)> placed = [];
    private readonly List<string> leftOut = [];

    /// <summary>For a figure whose limits are set: it is drawn once to learn where its axes lie.</summary>
    public LabelLayout(Plot plot)
    {
        this.plot = plot;
        plot.RenderInMemory(Figure.Width, Figure.Height);
        Inside = plot.LastRender.DataRect.Contract(Edge);
    }

    /// <summary>Where words may stand [pixels, y downwards].</summary>
    public PixelRect Inside { get; }

    public IReadOnlyList<(string Text, PixelRect Place)> Placed => placed;

    public IReadOnlyList<string> LeftOut => leftOut;

    public void Dispose() => paint.Dispose();

    /// <summary>A line that words should not lie on, as far as can be.</summary>
    public void Avoid(IReadOnlyList<Pixel> line, double weight = 1)
    {
        for (int i = 1; i < line.Count; i++)
        {
            Pixel a = line[i - 1], b = line[i];
            int parts = 1 + (int)Math.Min(Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / PointEvery, Figure.Width);
            for (int k = 0; k < parts; k++)
            {
                (int X, int Y) at = ((int)((a.X + (b.X - a.X) * k / parts) / PointEvery), (int)((a.Y + (b.Y - a.Y) * k / parts) / PointEvery));
                lines[at] = Math.Max(weight, lines.GetValueOrDefault(at));
            }
        }
    }

    /// <summary>Puts words at the best of some places; null where every one is taken or leaves the axes.</summary>
    /// <param name="text">The words; cut with an ellipsis where they are wider than the axes.</param>
    /// <param name="colour">Their colour.</param>
    /// <param name="places">Upper left corners for words of a size, the best first.</param>
    /// <param name="lead">A line that will lead from the words; it should cross no others. Null where there is none.</param>
    public PixelRect? Place(string text, Color colour, Func<PixelSize, IEnumerable<Pixel>> places, Func<PixelRect, PixelRect>? lead = null)
    {
        (string fitting, PixelSize size) = Fitting(text);
        PixelRect? best = null;
        double least = double.PositiveInfinity;
        foreach (Pixel corner in places(size))
        {
            var place = new PixelRect(corner, size);
            if (!IsInside(place) || placed.Any(p => Meet(p.Place, place)))
                continue;
            double hits = Hits(place.Expand(Near));
            if (lead is not null)
                hits += CrossedWords * placed.Count(p => Meet(p.Place, lead(place)));
            if (hits >= least)
                continue;
            (best, least) = (place, hits);
            if (hits == 0)
                break;
        }

        if (best is not { } found)
        {
            leftOut.Add(text);
            return null;
        }

        placed.Add((fitting, found));
        Coordinates at = plot.GetCoordinates(found.TopLeft, plot.Axes.Bottom, plot.Axes.Left);
        plot.Note(fitting, at.X, at.Y, colour, Alignment.UpperLeft);
        return found;
    }

    /// <summary>Points of lines in a rectangle, by their weight.</summary>
    private double Hits(PixelRect place)
    {
        double hits = 0;
        for (int x = (int)(place.Left / PointEvery); x <= (int)(place.Right / PointEvery); x++)
        {
            for (int y = (int)(place.Top / PointEvery); y <= (int)(place.Bottom / PointEvery); y++)
                hits += lines.GetValueOrDefault((x, y));
        }

        return hits;
    }

    private bool IsInside(PixelRect p) => p.Left >= Inside.Left && p.Right <= Inside.Right && p.Top >= Inside.Top && p.Bottom <= Inside.Bottom;

    private static bool Meet(PixelRect a, PixelRect b) =>
        a.Left < b.Right + Apart && b.Left < a.Right + Apart && a.Top < b.Bottom && b.Top < a.Bottom;

    private (string Text, PixelSize Size) Fitting(string text)
    {
        for (string cut = text; ; cut = Figure.Short(cut, cut.Length - 1))
        {
            MeasuredText measured = Figure.NoteStyle(cut).Measure(cut, paint);
            if (measured.Width <= Inside.Width || cut.Length < 2)
                return (cut, measured.Size);
        }
    }
}
