using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Staging.Core.Tests.Samples;

/// <summary>A circle on paper [mm], y downwards.</summary>
internal readonly record struct Circle(double X, double Y, double Radius);

/// <summary>A page of the builder's sheet, as a printer would read it [mm].</summary>
internal sealed partial class SheetFile
{
    private SheetFile(double width, double height, Circle[] circles, double scaleBar) =>
        (Width, Height, Circles, ScaleBar) = (width, height, circles, scaleBar);

    public double Width { get; }

    public double Height { get; }

    /// <summary>Holes and register marks, in the order in which they are drawn.</summary>
    public Circle[] Circles { get; }

    public double ScaleBar { get; }

    /// <summary>Holes alone; an SVG names them.</summary>
    public Circle[] Holes { get; private init; } = [];

    /// <summary>Left, upper, right and lower cut line.</summary>
    public (double Left, double Upper, double Right, double Lower) Cut { get; private init; }

    /// <summary>The rectangle in which the strip is drawn.</summary>
    public (double Left, double Upper, double Right, double Lower) Window { get; private init; }

    public string Words { get; private init; } = "";

    public static SheetFile OfSvg(string path)
    {
        XElement page = XDocument.Load(path).Root!;
        double width = Millimetres(page, "width"), height = Millimetres(page, "height");
        Assert.Equal(FormattableString.Invariant($"0 0 {width} {height}"), (string)page.Attribute("viewBox")!);
        XElement[] circles = [.. page.Descendants().Where(e => e.Name.LocalName == "circle")];
        XElement[] lines = [.. page.Descendants().Where(e => e.Name.LocalName == "line")], cut = [.. lines.Where(l => Number(l, "stroke-width") == 0.3).Take(4)];
        XElement scale = Assert.Single(lines, l => (string?)l.Attribute("class") == "scale");
        XElement window = page.Descendants().Where(e => e.Name.LocalName == "clipPath").Last().Elements().Single();
        return new SheetFile(width, height, [.. circles.Select(Of)], Number(scale, "x2") - Number(scale, "x1"))
        {
            Holes = [.. circles.Where(c => (string?)c.Attribute("class") == "hole").Select(Of)],
            Cut = (cut.Min(l => Number(l, "x1")), cut.Min(l => Number(l, "y1")), cut.Max(l => Number(l, "x2")), cut.Max(l => Number(l, "y2"))),
            Window = (Number(window, "x"), Number(window, "y"), Number(window, "x") + Number(window, "width"), Number(window, "y") + Number(window, "height")),
            Words = string.Join('\n', page.Descendants().Where(e => e.Name.LocalName == "text").Select(t => t.Value.Replace('\u00a0', ' '))),
        };

        static Circle Of(XElement circle) => new(Number(circle, "cx"), Number(circle, "cy"), Number(circle, "r"));
    }

    /// <summary>Reads the operators of an uncompressed document, and that its table of objects leads to them.</summary>
    public static SheetFile[] OfPdf(string path)
    {
        string text = System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(path));
        int table = int.Parse(StartOfTable().Match(text).Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.StartsWith("xref\n", text[table..], StringComparison.Ordinal);
        int[] starts = [.. InTable().Matches(text[table..]).Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture))];
        Assert.All(starts.Select((at, i) => (at, i)), s => Assert.StartsWith($"{s.i + 1} 0 obj", text[s.at..], StringComparison.Ordinal));
        double[][] boxes = [.. MediaBox().Matches(text).Select(Numbers)];
        string[] pages = [.. Stream().Matches(text).Select(m => m.Groups["body"].Value)];
        Assert.Equal(boxes.Length, pages.Length);
        Assert.All(Stream().Matches(text), m => Assert.Equal(m.Groups["length"].Value, m.Groups["body"].Length.ToString(CultureInfo.InvariantCulture)));
        return [.. boxes.Zip(pages, OfPage)];
    }

    private static SheetFile OfPage(double[] box, string operators)
    {
        // Everything is placed by one matrix: points from millimetres, y downwards from the upper edge.
        double[] matrix = Numbers(Matrix().Match(operators));
        Circle Placed(double left, double right, double y) => new(
            Length(matrix[0] * 0.5 * (left + right)), Length(box[1] - (matrix[3] * y + matrix[5])), Length(matrix[0] * 0.5 * (right - left)));
        Circle[] circles = [.. Bezier().Matches(operators).Select(Numbers).Select(n => Placed(n[2], n[0], n[1]))];
        double bar = Segment().Matches(operators).Select(Numbers).Where(n => n[1] == n[3] && n[0] == 10 && n[2] == 60)
            .Select(n => Length(matrix[0] * (n[2] - n[0]))).Single();
        return new SheetFile(Length(box[0]), Length(box[1]), circles, bar);
    }

    private static double Length(double points) => points * 25.4 / 72;

    private static double[] Numbers(Match match) =>
        [.. match.Groups.Values.Skip(1).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture))];

    private static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);

    private static double Millimetres(XElement element, string name)
    {
        string text = (string)element.Attribute(name)!;
        Assert.EndsWith("mm", text, StringComparison.Ordinal);
        return double.Parse(text[..^2], CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"startxref\n(\d+)\n%%EOF")]
    private static partial Regex StartOfTable();

    [GeneratedRegex(@"(?m)^(\d{10}) 00000 n $")]
    private static partial Regex InTable();

    [GeneratedRegex(@"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]")]
    private static partial Regex MediaBox();

    [GeneratedRegex(@"/Length (?<length>\d+) >>\nstream\n(?<body>.*?)endstream", RegexOptions.Singleline)]
    private static partial Regex Stream();

    [GeneratedRegex(@"^([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) cm\n")]
    private static partial Regex Matrix();

    /// <summary>Four arcs from the right end of a circle; the second ends at its left.</summary>
    [GeneratedRegex(@"(?m)^([-\d.]+) ([-\d.]+) m\n[-\d. ]+ c\n(?:[-\d.]+ ){4}([-\d.]+) [-\d.]+ c\n[-\d. ]+ c\n[-\d. ]+ c S$")]
    private static partial Regex Bezier();

    [GeneratedRegex(@"(?m)^([-\d.]+) ([-\d.]+) m ([-\d.]+) ([-\d.]+) l S$")]
    private static partial Regex Segment();
}
