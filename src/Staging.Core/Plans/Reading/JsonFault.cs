using System.Text;
using System.Text.Json;

namespace Staging.Core.Plans.Reading;

/// <summary>
/// What is wrong with a text that is not JSON, in plain words, told by the character where reading stopped.
/// </summary>
internal static class JsonFault
{
    private const string Value = "a value is a text in double quotes, a number, an object, a list, true or false";

    /// <summary>Says what is wrong.</summary>
    /// <param name="error">The fault as the parser has it; asked only whether it was for depth.</param>
    /// <param name="text">The text.</param>
    /// <param name="at">Where reading stopped.</param>
    public static string InWords(JsonException error, byte[] text, int at)
    {
        if (error.Message.Contains("maximum configured depth", StringComparison.Ordinal))
            return Invariant.Text($"objects and lists stand more than {InputLimits.MaxDepth} deep within one another.");
        if (at >= text.Length)
            return text.Length == 0 ? "the text is empty." : "the text ends before its last bracket or quote is closed.";
        Rune.DecodeFromUtf8(text.AsSpan(at), out Rune sign, out _);
        return (char)Math.Min(sign.Value, char.MaxValue) switch
        {
            '/' or '#' => "remarks have no place in a plan; they belong in the sources of the numbers.",
            '\'' => "texts and keys stand in double quotes.",
            ',' => "a comma stands where a key or a value is wanted.",
            '}' or ']' => "a bracket closes where a key or a value is wanted, or another bracket; no comma stands before a closing one.",
            < ' ' => "a line break or another control character stands within a text.",
            '"' => "a comma or a colon is missing before this text.",
            '{' or '[' => "a comma or a colon is missing before this bracket.",
            >= '0' and <= '9' or '-' or '.' or '+' => "this is not a number as JSON writes it, or a comma or a colon is missing before it.",
            _ => $"'{sign}' cannot stand here; {Value}.",
        };
    }
}
