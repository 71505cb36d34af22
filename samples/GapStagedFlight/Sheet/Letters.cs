namespace GapStagedFlight.Sheet;

/// <summary>How much room text takes, before any font is at hand: widths of a plain sans serif, rounded up.</summary>
internal static class Letters
{
    /// <summary>Mean width of a letter over the size of its font [-].</summary>
    private const double Width = 0.51;

    public static double WidthOf(string text, double size) => Width * size * text.Length;

    /// <summary>The size that lets a text fit into a width, no more than the one wanted.</summary>
    public static double Fitting(string text, double wanted, double width) => Math.Min(wanted, width / (Width * Math.Max(1, text.Length)));

    /// <summary>Text in lines that fit into a width.</summary>
    public static IEnumerable<string> Lines(string text, double size, double width)
    {
        string line = "";
        foreach (string word in text.Split(' '))
        {
            if (line.Length > 0 && WidthOf($"{line} {word}", size) > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }
}
