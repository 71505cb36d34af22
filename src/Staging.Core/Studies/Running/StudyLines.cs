using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Staging.Core.Studies;

/// <summary>
/// The text of a part, one fact per line: a keyword, a space, the values. The lines have a fixed order and the last is
/// <c>end</c>, so that a lost, repeated or truncated line is detected; the line before it is the SHA-256 of all others,
/// each with a line feed, so that a changed digit is detected.
/// </summary>
internal sealed class StudyLines : IDisposable
{
    public const string Checksum = "checksum", Last = "end";

    private readonly TextReader reader;
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
    private string? next;
    private int taken;

    private StudyLines(TextReader reader) => (this.reader, next) = (reader, reader.ReadLine());

    /// <summary>Reads a text from its title to its end.</summary>
    /// <exception cref="FormatException">It is no such text; the message names the line.</exception>
    public static T Read<T>(TextReader reader, string title, Func<StudyLines, T> read)
    {
        ArgumentNullException.ThrowIfNull(reader);
        using var lines = new StudyLines(reader);
        try
        {
            lines.TakeExactly(title);
            T part = read(lines);
            lines.TakeChecksum();
            lines.TakeExactly(Last);
            return lines.next is null ? part : throw new FormatException("nothing may follow the end");
        }
        catch (Exception fault) when (fault is FormatException or ArgumentException)
        {
            throw new FormatException($"Line {lines.taken} of the study part: {fault.Message}", fault);
        }
    }

    /// <summary>The values of the next line, which must begin with a given word.</summary>
    public string Take(string word) => TryTake(word) ?? throw Missing(word);

    /// <summary>The values of the next line if it begins with a word; otherwise the line stays.</summary>
    public string? TryTake(string word)
    {
        if (next is null || !next.StartsWith(word + " ", StringComparison.Ordinal))
            return null;
        string values = next[(word.Length + 1)..];
        Step();
        return values;
    }

    /// <summary>Every line that follows and begins with a word.</summary>
    public IEnumerable<string> TakeAll(string word)
    {
        while (TryTake(word) is { } values)
            yield return values;
    }

    /// <summary>Values separated by spaces, the last of which may contain spaces.</summary>
    public static string[] Split(string values, string what, int count) =>
        values.Split(' ', count) is var parts && parts.Length == count
            ? parts
            : throw new FormatException($"{what} belong here, not \"{Excerpt.Of(values)}\"");

    /// <summary>A whole number, not below 0.</summary>
    public static long Count(string text, string what) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out long n)
        ? n
        : throw new FormatException($"{what} has to be a whole number, 0 or more, not \"{Excerpt.Of(text)}\"");

    /// <summary>A finite number, exactly as written.</summary>
    public static double Number(string text, string what) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out double x) && double.IsFinite(x)
            ? x
            : throw new FormatException($"{Excerpt.Of(what)} has to be a finite number, not \"{Excerpt.Of(text)}\"");

    public void Dispose() => hash.Dispose();

    private void TakeChecksum()
    {
        string held = Convert.ToHexStringLower(hash.GetHashAndReset());
        if (Take(Checksum) != held)
            throw new FormatException("the text was altered: its lines do not have this checksum");
    }

    private void TakeExactly(string line)
    {
        if (next != line)
            throw Missing(line);
        Step();
    }

    private void Step()
    {
        hash.AppendData(Encoding.UTF8.GetBytes(next + "\n"));
        (next, taken) = (reader.ReadLine(), taken + 1);
    }

    private FormatException Missing(string expected)
    {
        taken++;
        string instead = next is null ? "but the text is over" : $"not \"{Excerpt.Of(next)}\"";
        return new FormatException($"\"{expected}\" belongs here, {instead}");
    }
}
