namespace GapStagedFlight.Sheet;

/// <summary>Finds places for small words beside holes, where they touch no hole, no edge and no other words.</summary>
internal sealed class LabelPlaces
{
    private const double Apart = 0.7;
    private readonly List<Box> taken = [];
    private readonly Box ground;

    public LabelPlaces(Box ground, IEnumerable<Box> holes)
    {
        this.ground = ground;
        taken.AddRange(holes);
    }

    /// <summary>The place of a word, its lower edge the base line; null where there is no room. A place that is given is taken.</summary>
    public Box? Beside(Box hole, string text, double size)
    {
        double width = Letters.WidthOf(text, size), height = 0.75 * size;
        double middle = 0.5 * (hole.Left + hole.Right - width), level = 0.5 * (hole.Upper + hole.Lower + height);
        foreach ((double x, double y) in new[]
        {
            (middle, hole.Lower + Apart + height), (middle, hole.Upper - Apart), (hole.Right + Apart, level), (hole.Left - Apart - width, level),
            (hole.Right + Apart, level + size), (hole.Left - Apart - width, level + size),
        })
        {
            var box = new Box(x, y - height, x + width, y);
            if (!box.Within(ground) || taken.Any(box.Meets))
                continue;
            taken.Add(box);
            return box;
        }

        return null;
    }
}

/// <summary>A rectangle on a page [mm], y downwards.</summary>
internal readonly record struct Box(double Left, double Upper, double Right, double Lower)
{
    public bool Meets(Box other) => Left < other.Right && Right > other.Left && Upper < other.Lower && Lower > other.Upper;

    public bool Within(Box other) => Left >= other.Left && Right <= other.Right && Upper >= other.Upper && Lower <= other.Lower;
}
