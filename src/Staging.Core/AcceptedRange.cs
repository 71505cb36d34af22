using System.Globalization;

namespace Staging.Core;

/// <summary>
/// The range that a refusal of <see cref="Guard"/> quotes, as numbers, so that it can be said again in another unit.
/// </summary>
/// <param name="Low">Lower end in [Unit].</param>
/// <param name="LowIncluded">Whether the lower end itself is accepted.</param>
/// <param name="High">Upper end in [Unit]; always accepted.</param>
/// <param name="Unit">Unit of both ends; <c>-</c> where there is none.</param>
internal sealed record AcceptedRange(double Low, bool LowIncluded, double High, string Unit)
{
    /// <summary>A number well inside.</summary>
    public double Middle => Low / 2 + High / 2;

    /// <summary>Whether a number in [Unit] is accepted; not-a-number never is.</summary>
    public bool Holds(double value) => (LowIncluded ? value >= Low : value > Low) && value <= High;

    /// <summary>The range in words, without unit.</summary>
    public string InWords() => InWords(Text(Low), Text(High));

    /// <summary>The range in words, with ends that were put in another unit.</summary>
    public string InWords(string low, string high) => LowIncluded ? $"between {low} and {high}" : $"above {low} and at most {high}";

    /// <summary>A number that is refused: six digits, or all of them where six are those of an end.</summary>
    public string Refused(double value)
    {
        string six = Text(value);
        return six == Text(Low) || six == Text(High) ? value.ToString("R", CultureInfo.InvariantCulture) : six;
    }

    /// <summary>A number for a message: six digits.</summary>
    public static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);
}
