using System.Globalization;
using System.Xml.Linq;

namespace GapStagedFlight.Sheet;

/// <summary>Draws a page as SVG whose user unit is a millimetre.</summary>
internal sealed class SvgPen : IPen
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private readonly XElement page;
    private XElement group;
    private int clips;

    public SvgPen(Paper paper, string title)
    {
        group = page = new XElement(Svg + "svg",
            new XAttribute("width", Number(paper.Width) + "mm"), new XAttribute("height", Number(paper.Height) + "mm"),
            new XAttribute("viewBox", $"0 0 {Number(paper.Width)} {Number(paper.Height)}"),
            new XAttribute("font-family", "Liberation Sans, Arial, Helvetica, sans-serif"),
            new XElement(Svg + "title", title),
            new XElement(Svg + "rect", new XAttribute("width", "100%"), new XAttribute("height", "100%"), new XAttribute("fill", "white")));
    }

    public void Line(Stroke stroke, double x1, double y1, double x2, double y2, string? name = null) =>
        group.Add(Stroked("line", stroke, name, ("x1", x1), ("y1", y1), ("x2", x2), ("y2", y2)));

    public void Circle(Stroke stroke, double x, double y, double radius, string? name = null) =>
        group.Add(Stroked("circle", stroke, name, ("cx", x), ("cy", y), ("r", radius)));

    public void Text(double x, double y, double size, string text, bool upright = false)
    {
        var element = new XElement(Svg + "text", new XAttribute("x", Number(x)), new XAttribute("y", Number(y)),
            new XAttribute("font-size", Number(size)), text);
        if (upright)
            element.Add(new XAttribute("transform", $"rotate(-90 {Number(x)} {Number(y)})"));
        group.Add(element);
    }

    public void Blank(Box box) => group.Add(Rectangle(box, new XAttribute("fill", "white")));

    public void BeginClip(Box box)
    {
        string id = "window" + (++clips).ToString(CultureInfo.InvariantCulture);
        page.Add(new XElement(Svg + "clipPath", new XAttribute("id", id), Rectangle(box)));
        group = new XElement(Svg + "g", new XAttribute("clip-path", $"url(#{id})"));
        page.Add(group);
    }

    public void EndClip() => group = page;

    public void Save(string path) => new XDocument(page).Save(path);

    private static XElement Rectangle(Box box, params object[] attributes) => new(Svg + "rect", new XAttribute("x", Number(box.Left)),
        new XAttribute("y", Number(box.Upper)), new XAttribute("width", Number(box.Right - box.Left)),
        new XAttribute("height", Number(box.Lower - box.Upper)), attributes);

    private static XElement Stroked(string kind, Stroke stroke, string? name, params ReadOnlySpan<(string Key, double Value)> numbers)
    {
        var element = new XElement(Svg + kind);
        if (name is not null)
            element.Add(new XAttribute("class", name));
        foreach ((string key, double value) in numbers)
            element.Add(new XAttribute(key, Number(value)));
        element.Add(new XAttribute("fill", "none"), new XAttribute("stroke", "black"), new XAttribute("stroke-width", Number(stroke.Width)));
        if (stroke.Dash > 0)
            element.Add(new XAttribute("stroke-dasharray", Number(stroke.Dash)));
        return element;
    }

    private static string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
