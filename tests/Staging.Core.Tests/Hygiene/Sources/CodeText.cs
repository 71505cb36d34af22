using System.Text;

namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>Blanks comments and literals of C# text, so that a rule about code is not tripped by prose. Line ends stay.</summary>
internal static class CodeText
{
    public static string Of(string text)
    {
        var code = new StringBuilder(text.Length);
        int at = 0;
        while (at < text.Length)
        {
            int end = EndOfBlank(text, at);
            if (end == at)
            {
                code.Append(text[at++]);
                continue;
            }

            for (; at < end; at++)
                code.Append(text[at] == '\n' ? '\n' : ' ');
        }

        return code.ToString();
    }

    /// <summary>The end of the comment or literal that starts here; the same place where none does.</summary>
    private static int EndOfBlank(string text, int at)
    {
        if (Starts(text, at, "//"))
            return After(text, "\n", at, keep: true);
        if (Starts(text, at, "/*"))
            return After(text, "*/", at + 2);
        if (Starts(text, at, "\"\"\""))
            return EndOfRaw(text, at);
        if (Starts(text, at, "@\"") || Starts(text, at, "$@\"") || Starts(text, at, "@$\""))
            return EndOfVerbatim(text, text.IndexOf('"', at) + 1);
        if (text[at] == '"')
            return EndOfQuoted(text, at + 1, '"');
        return text[at] == '\'' ? EndOfQuoted(text, at + 1, '\'') : at;
    }

    private static int EndOfQuoted(string text, int at, char quote)
    {
        while (at < text.Length && text[at] != quote && text[at] != '\n')
            at += text[at] == '\\' ? 2 : 1;
        return Math.Min(at + 1, text.Length);
    }

    private static int EndOfVerbatim(string text, int at)
    {
        while (at < text.Length && (text[at] != '"' || Starts(text, at, "\"\"")))
            at += text[at] == '"' ? 2 : 1;
        return Math.Min(at + 1, text.Length);
    }

    private static int EndOfRaw(string text, int at)
    {
        int quotes = 0;
        while (at + quotes < text.Length && text[at + quotes] == '"')
            quotes++;
        return After(text, new string('"', quotes), at + quotes);
    }

    private static int After(string text, string mark, int from, bool keep = false)
    {
        int found = text.IndexOf(mark, from, StringComparison.Ordinal);
        if (found < 0)
            return text.Length;
        return keep ? found : found + mark.Length;
    }

    private static bool Starts(string text, int at, string mark) => string.CompareOrdinal(text, at, mark, 0, mark.Length) == 0;
}
