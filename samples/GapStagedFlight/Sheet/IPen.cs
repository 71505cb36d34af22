namespace GapStagedFlight.Sheet;

/// <summary>Draws on a page in millimetres, from its upper left corner, y downwards.</summary>
internal interface IPen
{
    /// <summary>A line; its name, if any, is kept where the format has names.</summary>
    void Line(Stroke stroke, double x1, double y1, double x2, double y2, string? name = null);

    void Circle(Stroke stroke, double x, double y, double radius, string? name = null);

    /// <summary>Text from a point on its base line; size is that of the font in millimetres.</summary>
    void Text(double x, double y, double size, string text, bool upright = false);

    /// <summary>A white ground for text, so that lines behind it do not cross it.</summary>
    void Blank(Box box);

    /// <summary>What follows is drawn within a rectangle only, until <see cref="EndClip"/>.</summary>
    void BeginClip(Box box);

    void EndClip();
}

/// <summary>A kind of line: its width and, for a dashed one, the length of a dash [mm].</summary>
internal sealed record Stroke(double Width, double Dash = 0)
{
    public static readonly Stroke Cut = new(0.3), Mark = new(0.2), Fine = new(0.1), Fold = new(0.2, 2), Join = new(0.2, 5), Station = new(0.08, 1);
}
