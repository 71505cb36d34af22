namespace GapStagedFlight.Sheet;

/// <summary>
/// Windows of one size that cover a strip, left to right and downwards from its upper left corner [mm]. Neighbours share a
/// rim; along its middle runs the line where the pages join, with register marks clear of the holes.
/// </summary>
internal sealed class Tiles
{
    /// <summary>What two neighbouring pages both show.</summary>
    private const double Rim = 12;

    /// <summary>Half the size of a register mark, and the step in which a clear place is looked for.</summary>
    private const double Half = 3, Step = 4;

    private readonly double[] columns, rows;
    private readonly double width, height;

    public Tiles(double width, double height, double wide, double tall)
    {
        (this.width, this.height, Wide, Tall) = (width, height, wide, tall);
        (columns, rows) = (Starts(width, wide), Starts(height, tall));
    }

    public double Wide { get; }

    public double Tall { get; }

    public int Count => columns.Length * rows.Length;

    /// <summary>The windows in the order of pages, on the strip.</summary>
    public Box this[int page]
    {
        get
        {
            double x = columns[page % columns.Length], y = rows[page / columns.Length];
            return new Box(x, y, Math.Min(x + Wide, width), Math.Min(y + Tall, height));
        }
    }

    /// <summary>Upper and lower end of each row, without the rims.</summary>
    public IEnumerable<(double Upper, double Lower)> Rows =>
        rows.Select((y, i) => (i == 0 ? 0 : y + Rim, i == rows.Length - 1 ? height : y + Tall - Rim));

    /// <summary>The lines along which pages join, and two register marks on each page's share of them.</summary>
    public void Draw(IPen pen, double left, double upper, IReadOnlyList<Box> holes)
    {
        foreach (double x in columns.Skip(1).Select(c => c + 0.5 * Rim))
        {
            pen.Line(Stroke.Join, left + x, upper, left + x, upper + height);
            foreach ((double from, double to) in Ends(rows, Tall, height))
                Marks(pen, from, to, at => (left + x, upper + at), holes);
        }

        foreach (double y in rows.Skip(1).Select(r => r + 0.5 * Rim))
        {
            pen.Line(Stroke.Join, left, upper + y, left + width, upper + y);
            foreach ((double from, double to) in Ends(columns, Wide, width))
                Marks(pen, from, to, at => (left + at, upper + y), holes);
        }
    }

    /// <summary>Where each window begins along a length.</summary>
    private static double[] Starts(double length, double window) => length <= window
        ? [0]
        : [.. Enumerable.Range(0, (int)Math.Ceiling((length - Rim) / (window - Rim))).Select(i => i * (window - Rim))];

    /// <summary>What each window has to itself along a length.</summary>
    private static IEnumerable<(double From, double To)> Ends(double[] starts, double window, double length) =>
        starts.Select((s, i) => (s + (i == 0 ? Step : Rim + Step), Math.Min(s + window, length) - (s + window < length ? Rim + Step : Step)));

    private static void Marks(IPen pen, double from, double to, Func<double, (double X, double Y)> place, IReadOnlyList<Box> holes)
    {
        double[] steps = [.. Enumerable.Range(0, Math.Max(1, (int)((to - from) / Step) + 1)).Select(i => from + i * Step)];
        double[] clear = [.. steps.Where(at => !holes.Any(Around(place(at)).Meets))];
        if (clear.Length == 0)
            return;
        foreach ((double x, double y) in new[] { clear[0], clear[^1] }.Distinct().Select(place))
        {
            pen.Circle(Stroke.Mark, x, y, 0.5 * Half, "register");
            pen.Line(Stroke.Mark, x - Half, y, x + Half, y);
            pen.Line(Stroke.Mark, x, y - Half, x, y + Half);
        }
    }

    private static Box Around((double X, double Y) at) => new(at.X - Half, at.Y - Half, at.X + Half, at.Y + Half);
}
