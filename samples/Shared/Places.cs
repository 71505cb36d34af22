using ScottPlot;

namespace Samples;

/// <summary>Where words of a size could stand: upper left corners, the best first [pixels, y downwards].</summary>
internal static class Places
{
    private const float Gap = 6, Step = 12;

    /// <summary>Beside a curve, near a share of its length and from there on to both sides, close by before far off.</summary>
    public static IEnumerable<Pixel> Beside(IReadOnlyList<Pixel> curve, double share, PixelSize size)
    {
        if (curve.Count == 0)
            return [];
        double middle = curve[0].X + share * (curve[^1].X - curve[0].X);
        Pixel[] points = [.. curve.Where((_, i) => i % Math.Max(1, curve.Count / 80) == 0).OrderBy(p => Math.Abs(p.X - middle))];
        return from far in new[] { Gap, 3 * Gap }
               from p in points
               from corner in Around(p, far, size)
               select corner;
    }

    /// <summary>Above a lower line or below it, all along: from one end to the other.</summary>
    public static IEnumerable<Pixel> Along(PixelRect inside, float upper, float lower, bool fromRight, PixelSize size)
    {
        for (float shift = 0; shift <= inside.Width - size.Width; shift += Step)
        {
            float x = fromRight ? inside.Right - size.Width - shift : inside.Left + shift;
            yield return new Pixel(x, upper - size.Height - 1);
            yield return new Pixel(x, lower + 1);
        }
    }

    /// <summary>Beside an upright line, as high as can be; on its right before its left.</summary>
    public static IEnumerable<Pixel> BesideUpright(PixelRect inside, float x, PixelSize size)
    {
        for (float y = inside.Top; y <= inside.Bottom - size.Height; y += size.Height + 2)
        {
            yield return new Pixel(x + Gap, y);
            yield return new Pixel(x - Gap - size.Width, y);
        }
    }

    /// <summary>Anywhere, from the upper left on.</summary>
    public static IEnumerable<Pixel> Anywhere(PixelRect inside, PixelSize size)
    {
        for (float y = inside.Top; y <= inside.Bottom - size.Height; y += 0.5f * size.Height)
        {
            for (float x = inside.Left; x <= inside.Right - size.Width; x += 2 * Step)
                yield return new Pixel(x, y);
        }
    }

    private static IEnumerable<Pixel> Around(Pixel p, float far, PixelSize size)
    {
        float left = p.X - far - size.Width, middle = p.X - 0.5f * size.Width, right = p.X + far;
        float above = p.Y - far - size.Height, level = p.Y - 0.5f * size.Height, below = p.Y + far;
        return [new(left, above), new(middle, above), new(right, above), new(right, below), new(middle, below), new(left, below), new(right, level), new(left, level)];
    }
}
