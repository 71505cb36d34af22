using System.Globalization;
using Staging.Core.Sizing;

namespace GapStagedFlight.Sheet;

/// <summary>Draws a strip on a page: its left edge at a place across the page, station 0 at a place down it.</summary>
internal sealed class StripDrawing(IPen pen, Strip strip, double left, double zero)
{
    private const double Small = 2.4, Gutter = 11.5;
    private readonly LabelPlaces places = new(
        new Box(left + 0.5, zero - strip.Top + 0.5, left + strip.Around - 0.5, zero - strip.Bottom - 0.5),
        strip.Holes.Select(h => Bounds(h, left, zero)));

    private double Upper => Y(strip.Top);

    private double Lower => Y(strip.Bottom);

    /// <summary>Cut lines, holes and overlap; what lies beside the strip is drawn by <see cref="Stations"/>.</summary>
    public void Draw()
    {
        double right = left + strip.Width, fold = left + strip.Around, line = left + strip.Zero;
        pen.Line(Stroke.Cut, left, Upper, right, Upper);
        pen.Line(Stroke.Cut, left, Lower, right, Lower);
        pen.Line(Stroke.Cut, left, Upper, left, Lower);
        pen.Line(Stroke.Cut, right, Upper, right, Lower);
        pen.Line(Stroke.Fold, fold, Upper, fold, Lower);
        pen.Line(Stroke.Station, line, Upper, line, Lower);
        pen.Text(line + 8 < fold ? line + 0.8 : line - 7.5, Lower - 1.2, Small, "0 deg");
        Holes();
        const string glue = "overlap for glue";
        double size = Letters.Fitting(glue, Small, strip.Height - 2);
        pen.Text(fold + 6, 0.5 * (Upper + Lower + Letters.WidthOf(glue, size)), size, glue, upright: true);
    }

    /// <summary>A scale of stations beside the left edge, with the stations of the rings.</summary>
    public void Stations()
    {
        double[] rings = [.. strip.Holes.Select(h => h.Station).Distinct().Order()];
        double last = double.NegativeInfinity;
        foreach (double ring in rings)
        {
            pen.Line(Stroke.Fine, left - 2.5, Y(ring), left, Y(ring));
            if (ring - last < Small)
                continue;
            last = ring;
            pen.Text(left - Gutter, Y(ring) + 0.35 * Small, Small, ring.ToString("0.0#", CultureInfo.InvariantCulture));
        }

        for (double station = 10 * Math.Ceiling(strip.Bottom / 10); station <= strip.Top; station += 10)
        {
            pen.Line(Stroke.Fine, left - 1.5, Y(station), left, Y(station));
            if (rings.All(r => Math.Abs(r - station) > 1.2 * Small))
                pen.Text(left - Gutter, Y(station) + 0.35 * Small, Small, station.ToString("0", CultureInfo.InvariantCulture));
        }
    }

    private void Holes()
    {
        foreach (HoleRing ring in strip.Template.Rings)
        {
            double y = Y(ring.Station!.Value.Millimeters);
            pen.Line(Stroke.Station, left, y, left + strip.Around, y);
        }

        foreach (StripHole hole in strip.Holes)
        {
            double x = left + hole.X, y = Y(hole.Station), arm = hole.Arm;
            pen.Circle(Stroke.Mark, x, y, 0.5 * hole.Diameter, "hole");
            pen.Line(Stroke.Fine, x - arm, y, x + arm, y, "centre");
            pen.Line(Stroke.Fine, x, y - arm, x, y + arm, "centre");
            if (places.Beside(Bounds(hole), hole.Drill, Small) is not { } box)
                continue;
            pen.Blank(box);
            pen.Text(box.Left, box.Lower, Small, hole.Drill);
        }
    }

    private double Y(double station) => zero - station;

    /// <summary>What the cross of a hole covers.</summary>
    public Box Bounds(StripHole hole) => Bounds(hole, left, zero);

    private static Box Bounds(StripHole hole, double left, double zero) => new(
        left + hole.X - hole.Arm, zero - hole.Station - hole.Arm, left + hole.X + hole.Arm, zero - hole.Station + hole.Arm);
}
