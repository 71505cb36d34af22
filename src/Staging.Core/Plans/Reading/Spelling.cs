using System.Collections.Immutable;

namespace Staging.Core.Plans.Reading;

/// <summary>What a misspelt word was probably meant to be.</summary>
internal static class Spelling
{
    /// <summary>Says that a word is not among those known, with the nearest of them, or all.</summary>
    /// <param name="what">What the word is, for example <c>key</c>.</param>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words that are accepted.</param>
    /// <param name="missing">Those of them that should be there and are not.</param>
    public static string NotOneOf(string what, string word, ImmutableArray<string> known, IEnumerable<string>? missing = null)
    {
        string start = $"'{Excerpt.Of(word)}' is not a known {what} here; ";
        if (Nearest(word, known) is not { } nearest)
            return $"{start}accepted: {(known.IsEmpty ? "none" : string.Join(", ", known))}.";
        string meant = missing?.Contains(nearest) == true ? $"'{nearest}', which is missing" : $"'{nearest}'";
        return $"{start}did you mean {meant}? Accepted: {string.Join(", ", known)}.";
    }

    /// <summary>The known word within a third of its letters of the one written; null when none is.</summary>
    public static string? Nearest(string word, ImmutableArray<string> known)
    {
        string? nearest = null;
        int min = int.MaxValue;
        foreach (string candidate in known.Where(k => Math.Abs(k.Length - word.Length) <= k.Length / 3))
        {
            int changes = Changes(word, candidate);
            if (changes < min && changes <= Math.Max(1, candidate.Length / 3))
                (nearest, min) = (candidate, changes);
        }

        return nearest;
    }

    /// <summary>
    /// Letters to insert, drop or replace, without regard to case (V. I. Levenshtein, Soviet Physics Doklady 10, 1966).
    /// </summary>
    private static int Changes(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = diagonal + (char.ToUpperInvariant(a[i - 1]) == char.ToUpperInvariant(b[j - 1]) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[b.Length];
    }
}
