namespace GapStagedFlight.Sheet;

/// <summary>A size of paper, upright [mm], and how it is divided.</summary>
internal sealed record Paper(string Name, double Width, double Height)
{
    public const double Margin = 10, Foot = 30;

    public static readonly Paper A4 = new("A4", 210, 297), Letter = new("letter", 215.9, 279.4);

    public double Inside => Width - 2 * Margin;

    public double FootTop => Height - Margin - Foot;

    public static Paper Named(string name) => name.ToLowerInvariant() switch
    {
        "a4" => A4,
        "letter" => Letter,
        _ => throw new ArgumentException($"paper {name} is not known; there are a4 and letter."),
    };
}
