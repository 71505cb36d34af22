using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Staging.Core.Tests.Samples;

/// <summary>Words in the SVG of a figure and the rectangle they cover [pixels, y downwards].</summary>
internal sealed partial record FigureText(string Words, double Left, double Upper, double Right, double Lower)
{
    /// <summary>Height of letters above and below the base line, and width of the last letter, over the size of the font: an upright sans serif.</summary>
    private const double Above = 0.75, Under = 0.2, Wide = 0.6;

    public static FigureText[] Of(string svg) => [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "text" && e.Value.Trim().Length > 0).Select(Of)];

    public bool Meets(FigureText other) => Left < other.Right && Right > other.Left && Upper < other.Lower && Lower > other.Upper;

    private static FigureText Of(XElement text)
    {
        double size = Numbers(text, "font-size")[0];
        double[] x = Numbers(text, "x"), y = Numbers(text, "y"), placed = Numbers(text, "transform");
        double[] m = placed.Length == 6 ? placed : [1, 0, 0, 1, placed[0], placed[1]];
        double left = x[0], right = x[^1] + Wide * size, upper = y[0] - Above * size, lower = y[0] + Under * size;
        (double X, double Y)[] corners = [.. new[] { (left, upper), (right, upper), (right, lower), (left, lower) }.Select(c => Placed(c.Item1, c.Item2))];
        return new FigureText(text.Value.Trim(), corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y));

        (double X, double Y) Placed(double px, double py) => (m[0] * px + m[2] * py + m[4], m[1] * px + m[3] * py + m[5]);
    }

    private static double[] Numbers(XElement text, string name) => [.. Number().Matches((string)text.Attribute(name)!).Select(Value)];

    private static double Value(Match number) => double.Parse(number.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"-?\d+(\.\d+)?(e-?\d+)?")]
    private static partial Regex Number();
}
