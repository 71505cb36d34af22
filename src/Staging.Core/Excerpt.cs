namespace Staging.Core;

/// <summary>The beginning of a text from elsewhere, for a message: no message is as long as what it is about.</summary>
internal static class Excerpt
{
    /// <summary>Most characters that are shown.</summary>
    public const int Longest = 60;

    /// <summary>The first characters of a long text, and never half of one that takes two.</summary>
    public static string Of(ReadOnlySpan<char> text, int longest = Longest) => text.Length <= longest
        ? text.ToString()
        : string.Concat(text[..(char.IsHighSurrogate(text[longest - 1]) ? longest - 1 : longest)], "...");
}
