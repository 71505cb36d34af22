using System.Text;

namespace Staging.Core.Studies;

/// <summary>
/// A text as one word of a line, from which it can be restored: <c>W/(m K)</c> is written <c>W/(m_K)</c>,
/// <c>kg_m2</c> as <c>kg\_m2</c>.
/// </summary>
internal static class LineWord
{
    public static string Of(string text)
    {
        var word = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            _ = c switch
            {
                ' ' => word.Append('_'),
                '_' or '\\' => word.Append('\\').Append(c),
                '\n' => word.Append("\\n"),
                '\r' => word.Append("\\r"),
                _ => word.Append(c),
            };
        }

        return word.ToString();
    }

    /// <summary>The text of a word.</summary>
    /// <exception cref="FormatException">A backslash stands before nothing that <see cref="Of"/> writes.</exception>
    public static string Read(string word)
    {
        var text = new StringBuilder(word.Length);
        for (int i = 0; i < word.Length; i++)
            text.Append(word[i] switch { '_' => ' ', '\\' => Escaped(word, ++i), char c => c });
        return text.ToString();
    }

    private static char Escaped(string word, int at) =>
        at >= word.Length ? throw new FormatException($"the word \"{Excerpt.Of(word)}\" ends in a backslash") : word[at] switch
        {
            'n' => '\n',
            'r' => '\r',
            '_' or '\\' => word[at],
            char c => throw new FormatException($"the word \"{Excerpt.Of(word)}\" holds a backslash before '{c}'"),
        };
}
