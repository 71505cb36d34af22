using Staging.Core.Sizing;

namespace GapStagedFlight.Sheet;

/// <summary>
/// What stands on a strip once it is cut out: the direction of flight, which wall it is, what its edges are level with, and
/// the drills. It stands in the widest band free of holes on one page, or beside the strip where there is none.
/// </summary>
internal sealed class StripWords
{
    private const double Size = 2.6, LineStep = 3.5, Indent = 10, Widest = 95, MostRings = 6, Clear = 5;
    private readonly Strip strip;
    private readonly string[] sentences;

    public StripWords(Strip strip, string title)
    {
        this.strip = strip;
        sentences =
        [
            title, $"upper edge {Edge(strip, strip.Top)}", $"lower edge {Edge(strip, strip.Bottom)}",
            .. strip.Template.Rings.Length > MostRings ? [] : strip.Template.Rings.Reverse().Select(Ring),
        ];
    }

    /// <summary>Draws on a page whose windows show given stations.</summary>
    public void Draw(IPen pen, double left, double zero, IEnumerable<(double Low, double High)> windows)
    {
        (double low, double high) = FreeBands().SelectMany(band => windows.Select(w =>
            (Low: Math.Max(band.Low, w.Low), High: Math.Min(band.High, w.High)))).MaxBy(b => b.High - b.Low);
        double room = Math.Min(strip.Around, Widest) - Indent - 2;
        string[] lines = Wrapped(room);
        if (high - low >= Height(lines))
            Block(pen, lines, room, left, zero - 0.5 * (low + high + Height(lines)));
        else
            Block(pen, Wrapped(Widest), Widest, left + strip.Width + 4, zero - strip.Top);
    }

    private static void Block(IPen pen, string[] lines, double room, double x, double top)
    {
        double shaft = x + 5, bottom = top + Height(lines);
        pen.Line(Stroke.Cut, shaft, bottom, shaft, top);
        pen.Line(Stroke.Cut, shaft, top, shaft - 1.5, top + 3);
        pen.Line(Stroke.Cut, shaft, top, shaft + 1.5, top + 3);
        pen.Text(shaft - 1.2, bottom - 1, Size, "flight", upright: true);
        double widest = Math.Min(room, lines.Max(l => Letters.WidthOf(l, Size)));
        pen.Blank(new Box(x + Indent, top, x + Indent + widest + 1, top + lines.Length * LineStep + 1));
        for (int i = 0; i < lines.Length; i++)
            pen.Text(x + Indent, top + (i + 1) * LineStep, Letters.Fitting(lines[i], Size, room), lines[i]);
    }

    private string[] Wrapped(double room) => [.. sentences.SelectMany(s => Letters.Lines(s, Size, room))];

    private static double Height(string[] lines) => Math.Max(lines.Length, 6) * LineStep + 2;

    private IEnumerable<(double Low, double High)> FreeBands()
    {
        double low = strip.Bottom + Clear;
        foreach (StripHole hole in strip.Holes.OrderBy(h => h.Station))
        {
            yield return (low, hole.Station - hole.Arm - Clear);
            low = Math.Max(low, hole.Station + hole.Arm + Clear);
        }

        yield return (low, strip.Top - 2);
    }

    private static string Ring(HoleRing ring) => FormattableString.Invariant($"station {ring.Station!.Value.Millimeters:0.0#}: {ring.Count} x ")
        + StripHole.Label(ring);

    private static string Edge(Strip strip, double station) => station == 0
        ? "level with the forward face of the booster motor (station\u00a00)"
        : station == strip.Top && strip.EndsAtNozzle
            ? FormattableString.Invariant($"level with the upper nozzle plane (station\u00a0{station:0.0#}\u00a0mm)")
            : FormattableString.Invariant($"{station:0.0#}\u00a0mm forward of the forward face of the booster motor");
}
