using System.Text;

namespace Staging.Core.Studies;

/// <summary>A unit as one word of a line, from which it comes back as it was: <c>W/(m K)</c> is written <c>W/(m_K)</c>, <c>kg_m2</c> as <c>kg\_m2</c>.</summary>
internal static class UnitWord
{
    public static string Of(string unit)
    {
        var word = new StringBuilder(unit.Length);
        foreach (char c in unit)
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

    /// <summary>The unit of a word.</summary>
    /// <exception cref="FormatException">A backslash stands before nothing that <see cref="Of"/> writes.</exception>
    public static string Read(string word)
    {
        var unit = new StringBuilder(word.Length);
        for (int i = 0; i < word.Length; i++)
            unit.Append(word[i] switch { '_' => ' ', '\\' => Escaped(word, ++i), char c => c });
        return unit.ToString();
    }

    private static char Escaped(string word, int at) => at >= word.Length ? throw new FormatException($"the unit \"{word}\" ends in a backslash") : word[at] switch
    {
        'n' => '\n',
        'r' => '\r',
        '_' or '\\' => word[at],
        char c => throw new FormatException($"the unit \"{word}\" holds a backslash before '{c}'"),
    };
}
