using System.Globalization;
using Staging.Core;
using Staging.Core.Sizing;

namespace GapStagedFlight.Sheet;

/// <summary>The pages of one wall: a head, a window on the strip, a foot.</summary>
internal sealed class SheetPages
{
    private const double Gutter = 12, LineStep = 4.2, Text = 3, Name = 5;
    private const int MostRings = 10, MostFindings = 2;

    /// <summary>What lines at the edge of a window may be wide [mm].</summary>
    private const double Edge = 0.3;

    /// <summary>What half of a number beside the strip may be high [mm].</summary>
    private const double Beside = 1.5;

    private const string Caution = "A computed margin is no permission to fly. Test the gap on the ground, at a distance, behind cover. "
        + "Local codes and the range safety officer decide.";

    private readonly Paper paper;
    private readonly string plan, title;
    private readonly string[] head;
    private readonly Strip strip;
    private readonly StripWords words;
    private readonly Tiles tiles;

    public SheetPages(Paper paper, string plan, string title, HoleTemplate template)
    {
        (this.paper, this.plan, this.title) = (paper, plan, title);
        head = [.. Head(template).SelectMany(l => Letters.Lines(l, Text, paper.Inside))];
        double tall = paper.FootTop - Upper - 2;
        strip = new Strip(template, tall);
        words = new StripWords(strip, title);
        tiles = new Tiles(strip.Width, strip.Height, paper.Inside - Gutter - 1, tall);
    }

    public int Count => tiles.Count;

    private double Upper => Paper.Margin + Name + 2 + head.Length * LineStep + 4;

    public void Draw(IPen pen, int page)
    {
        pen.Text(Paper.Margin, Paper.Margin + 4, Letters.Fitting(plan, Name, paper.Inside), plan);
        for (int i = 0; i < head.Length; i++)
            pen.Text(Paper.Margin, Paper.Margin + Name + 2 + (i + 1) * LineStep, Letters.Fitting(head[i], Text, paper.Inside), head[i]);
        Box window = tiles[page];
        double edge = Paper.Margin + Gutter, left = edge - window.Left, upper = Upper - window.Upper, zero = upper + strip.Top;
        var drawing = new StripDrawing(pen, strip, left, zero);
        if (window.Left == 0)
        {
            pen.BeginClip(new Box(0, Upper - Beside, edge, Upper + window.Lower - window.Upper + Beside));
            drawing.Stations();
            pen.EndClip();
        }

        pen.BeginClip(new Box(edge - Edge, Upper - Edge, Count == 1 ? paper.Width : edge + window.Right - window.Left + Edge,
            Count == 1 ? paper.FootTop : Upper + window.Lower - window.Upper + Edge));
        drawing.Draw();
        words.Draw(pen, left, zero, tiles.Rows.Select(r => (strip.Top - r.Lower, strip.Top - r.Upper)));
        tiles.Draw(pen, left, upper, [.. strip.Holes.Select(h => drawing.Bounds(h))]);
        pen.EndClip();
        Foot(pen, page);
    }

    private static IEnumerable<string> Head(HoleTemplate template)
    {
        double diameter = template.OuterDiameter!.Value.Millimeters;
        yield return FormattableString.Invariant($"{template.Wall}: outside diameter {diameter:0.0#} mm, {Math.PI * diameter:F2} mm round. ")
            + "Stations are measured from the forward face of the booster motor.";
        foreach (HoleRing ring in template.Rings.Take(MostRings))
            yield return FormattableString.Invariant(
                $"{ring}; {(template.GapLength - ring.Station!.Value).Millimeters:0.0#} mm below the upper nozzle plane");
        if (template.Rings.Length > MostRings)
            yield return FormattableString.Invariant($"and {template.Rings.Length - MostRings} rings more, as marked");
        foreach (ModelFinding finding in template.Findings.OrderByDescending(f => f.Severity).Take(MostFindings))
            yield return "TOO LITTLE WALL: " + finding.Message;
        int more = template.Findings.Length - MostFindings;
        if (more > 0)
            yield return FormattableString.Invariant($"TOO LITTLE WALL: and {more} more finding{(more > 1 ? "s" : "")} on this wall");
        yield return "Cut along the outer line, wrap round the tube with the print outwards, glue the overlap below the left edge.";
    }

    private void Foot(IPen pen, int page)
    {
        double x = Paper.Margin, y = paper.FootTop + 8;
        pen.Line(Stroke.Mark, x, y, x + 50, y, "scale");
        for (int i = 0; i <= 5; i++)
            pen.Line(Stroke.Mark, x + 10 * i, y - (i % 5 == 0 ? 3 : 1.5), x + 10 * i, y);
        pen.Text(x + 53, y, Text, "50 mm. Print at 100 %, not fitted to the page; measure this bar before you cut.");
        string split = Count == 1 ? "" : "; cut along the long dashes, lay the register marks on those of the next page";
        pen.Text(x, y + 6, Text, string.Create(CultureInfo.InvariantCulture, $"{title}, page {page + 1} of {Count}, {paper.Name}{split}"));
        double at = y + 11;
        foreach (string line in Letters.Lines(Caution, Text, paper.Inside))
        {
            pen.Text(x, at, Text, line);
            at += LineStep;
        }
    }
}
