using System.Globalization;
using System.Text;

namespace GapStagedFlight;

/// <summary>
/// Text for a terminal or a page. Characters that control a terminal or turn the direction of writing are shown as their
/// numbers: no name of a file or in a plan gives orders to whoever reads it.
/// </summary>
internal static class Plain
{
    /// <summary>Text of lines: the ends of its lines stay.</summary>
    public static string Text(string text) => text.Any(c => c != '\n' && Commands(c)) ? Shown(text) : text;

    private static bool Commands(char c) =>
        char.GetUnicodeCategory(c) is UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        || c is '\u061c' or '\u200e' or '\u200f' or (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069');

    private static string Shown(string text)
    {
        var shown = new StringBuilder(text.Length);
        foreach (char c in text)
            shown.Append(c != '\n' && Commands(c) ? FormattableString.Invariant($"\\u{(int)c:X4}") : $"{c}");
        return shown.ToString();
    }
}
