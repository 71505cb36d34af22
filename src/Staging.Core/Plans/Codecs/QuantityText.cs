using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// A quantity as one text, <c>18 mm</c>: a number as JSON writes it, then its unit, a blank between them or none.
/// </summary>
internal static partial class QuantityText
{
    /// <summary>A number as JSON writes it, for the pattern in a schema.</summary>
    public const string Number = @"-?[0-9]+(\.[0-9]+)?([eE][+-]?[0-9]+)?";

    /// <summary>Longest text that is looked at; no number needs more.</summary>
    private const int MaxLength = 100;

    /// <summary>Takes a text apart; false where it does not begin with a number.</summary>
    public static bool TrySplit(string text, out double number, [NotNullWhen(true)] out string? unit)
    {
        (number, unit) = (0, null);
        Match match = text.Length > MaxLength ? Match.Empty : Parts().Match(text);
        if (!match.Success)
            return false;
        number = double.Parse(match.Groups["number"].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture);
        unit = match.Groups["unit"].Value;
        return true;
    }

    [GeneratedRegex($"^(?<number>{Number}) *(?<unit>.*)$", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Parts();
}
