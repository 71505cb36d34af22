using System.Globalization;
using System.Text;

namespace GapStagedFlight.Sheet;

/// <summary>
/// Writes the pages of one PDF document in millimetres, uncompressed, in the standard font Helvetica: page size and places
/// are exact, which a page rounded to whole points is not.
/// </summary>
internal sealed class PdfPen(Paper paper, string title) : IPen
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Control points of four cubic arcs that make a circle, as a share of its radius [-]: 4/3 (sqrt 2 - 1).</summary>
    private const double Arc = 0.5522847498;

    private readonly List<StringBuilder> pages = [];

    private StringBuilder Page => pages[^1];

    /// <summary>Begins a page whose unit is a millimetre, y downwards.</summary>
    public void BeginPage()
    {
        pages.Add(new StringBuilder());
        Write($"{PointsPerMillimetre:F8} 0 0 {-PointsPerMillimetre:F8} 0 {paper.Height * PointsPerMillimetre:F4} cm");
    }

    public void Line(Stroke stroke, double x1, double y1, double x2, double y2, string? name = null)
    {
        Set(stroke);
        Write($"{x1:F4} {y1:F4} m {x2:F4} {y2:F4} l S");
    }

    public void Circle(Stroke stroke, double x, double y, double radius, string? name = null)
    {
        Set(stroke);
        double r = radius, k = Arc * radius;
        Write($"{x + r:F4} {y:F4} m");
        Write($"{x + r:F4} {y + k:F4} {x + k:F4} {y + r:F4} {x:F4} {y + r:F4} c");
        Write($"{x - k:F4} {y + r:F4} {x - r:F4} {y + k:F4} {x - r:F4} {y:F4} c");
        Write($"{x - r:F4} {y - k:F4} {x - k:F4} {y - r:F4} {x:F4} {y - r:F4} c");
        Write($"{x + k:F4} {y - r:F4} {x + r:F4} {y - k:F4} {x + r:F4} {y:F4} c S");
    }

    public void Text(double x, double y, double size, string text, bool upright = false) =>
        Write($"BT /F1 {size:F4} Tf {(upright ? "0 -1 -1 0" : "1 0 0 -1")} {x:F4} {y:F4} Tm {Quoted(text)} Tj ET");

    public void Blank(Box box) =>
        Write($"1 g {box.Left:F4} {box.Upper:F4} {box.Right - box.Left:F4} {box.Lower - box.Upper:F4} re f 0 g");

    public void BeginClip(Box box) =>
        Write($"q {box.Left:F4} {box.Upper:F4} {box.Right - box.Left:F4} {box.Lower - box.Upper:F4} re W n");

    public void EndClip() => Write($"Q");

    /// <summary>Writes catalogue, page tree, font, title, and the pages, with the table that says where each begins.</summary>
    public void Save(string path)
    {
        string kids = string.Join(' ', pages.Select((_, i) => $"{5 + 2 * i} 0 R"));
        List<string> objects =
        [
            "<< /Type /Catalog /Pages 2 0 R >>",
            $"<< /Type /Pages /Kids [{kids}] /Count {pages.Count} >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
            $"<< /Title {Quoted(title)} >>",
        ];
        foreach (StringBuilder content in pages)
        {
            objects.Add("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 " + FormattableString.Invariant(
                $"{paper.Width * PointsPerMillimetre:F4} {paper.Height * PointsPerMillimetre:F4}] ")
                + $"/Resources << /Font << /F1 3 0 R >> >> /Contents {objects.Count + 2} 0 R >>");
            objects.Add($"<< /Length {content.Length} >>\nstream\n{content}endstream");
        }

        var file = new StringBuilder("%PDF-1.4\n");
        var starts = new List<int>();
        foreach (string body in objects)
        {
            starts.Add(file.Length);
            file.Append(CultureInfo.InvariantCulture, $"{starts.Count} 0 obj\n{body}\nendobj\n");
        }

        int table = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {objects.Count + 1}\n0000000000 65535 f \n");
        foreach (int start in starts)
            file.Append(CultureInfo.InvariantCulture, $"{start:D10} 00000 n \n");
        file.Append(CultureInfo.InvariantCulture,
            $"trailer\n<< /Size {objects.Count + 1} /Root 1 0 R /Info 4 0 R >>\nstartxref\n{table}\n%%EOF\n");
        File.WriteAllBytes(path, Encoding.Latin1.GetBytes(file.ToString()));
    }

    private void Set(Stroke stroke)
    {
        string dash = stroke.Dash > 0 ? FormattableString.Invariant($"{stroke.Dash:F4}") : "";
        Write($"{stroke.Width:F4} w [{dash}] 0 d");
    }

    private void Write(FormattableString operators) => Page.Append(FormattableString.Invariant(operators)).Append('\n');

    /// <summary>A string of the font's letters; others become question marks.</summary>
    private static string Quoted(string text) =>
        $"({string.Concat(text.Select(c => c is '(' or ')' or '\\' ? $"\\{c}" : c is < ' ' or > '\u00ff' ? "?" : $"{c}"))})";
}
