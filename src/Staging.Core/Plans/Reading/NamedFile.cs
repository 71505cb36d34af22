using System.Text;

namespace Staging.Core.Plans.Reading;

/// <summary>Reads a UTF-8 file, and the files that it names in its own folder and below.</summary>
internal static class NamedFile
{
    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="what">What it should hold, in words.</param>
    /// <param name="parse">Makes it from the name of the file, its text, and what opens the files it names.</param>
    /// <exception cref="PlanFormatException">The file cannot be read, or holds no such thing.</exception>
    public static T Read<T>(string path, string what, Func<string, string, Func<string, TextReader>, T> parse)
    {
        string folder, json;
        ReadOnlySpan<char> trimmed = path.AsSpan().Trim();
        if (trimmed is ['{', .., '}'] && trimmed.Contains('"'))
            throw new PlanFormatException($"'{Excerpt.Of(trimmed)}' is the text of a {what}, not the name of a file; Parse reads a text.");
        try
        {
            folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? path;
            using StreamReader reader = BoundedText.Open(path);
            json = BoundedText.ReadAll(reader) ?? throw new IOException(JsonText.TooLong);
        }
        catch (DecoderFallbackException fault)
        {
            throw new PlanFormatException($"{path}: the {what} could not be read: it is not UTF-8 text.", fault);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new PlanFormatException($"{path}: the {what} could not be read: {fault.Message.ReplaceLineEndings(" ")}", fault);
        }

        return parse(path, json, name => BoundedText.IsLinked(folder, name)
            ? throw new IOException($"it is reached by a link, and links are not followed from a {what}.")
            : BoundedText.Open(Path.Combine(folder, name)));
    }
}
