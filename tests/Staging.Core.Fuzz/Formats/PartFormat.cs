using System.Security.Cryptography;
using System.Text;
using Staging.Core.Studies;

namespace Staging.Core.Fuzz.Formats;

/// <summary>
/// Texts of study parts one after the other: the first as it stands, then all of them with checksums that are right,
/// since no mutation would find one; merged in both orders.
/// </summary>
internal static class PartFormat
{
    private const string End = "\nend\n", Checksum = "\nchecksum ", Points = "staging study points";

    public static bool Reads(string text)
    {
        IEnumerable<string> sealedAgain = text.Split(End, 8, StringSplitOptions.RemoveEmptyEntries).Select(Sealed);
        return text.StartsWith(Points, StringComparison.Ordinal)
            ? Reads(text, sealedAgain, PartResult.Read, parts => PartResult.Merge([.. parts]), (part, to) => part.Write(to), Look)
            : Reads(text, sealedAgain, ReliabilityRun.Read, parts => ReliabilityRun.Merge([.. parts]), (part, to) => part.Write(to), Look);
    }

    private static bool Reads<T>(string text, IEnumerable<string> sealedAgain, Func<TextReader, T> read, Func<IEnumerable<T>, T> merge,
        Action<T, TextWriter> write, Action<T> look)
        where T : class
    {
        Read(text);
        T?[] parts = [.. sealedAgain.Select(Read)];
        if (parts.Length == 0 || parts.Contains(null))
            return false;
        try
        {
            T whole = merge(parts!);
            look(whole);
            Promise.SameText(Written(whole), Written(merge(parts.Reverse()!)));
            Promise.SameText(Written(whole), Written(read(new StringReader(Written(whole)))));
        }
        catch (ArgumentException)
        {
            return false;
        }

        return true;

        T? Read(string one)
        {
            if (!Attempt.Gives<T, FormatException>(() => read(new StringReader(one)), Promise.Refused, out T? part))
                return null;
            look(part);
            Promise.SameText(Written(part), Written(read(new StringReader(Written(part)))));
            return part;
        }

        string Written(T part)
        {
            using var writer = new StringWriter();
            write(part, writer);
            return writer.ToString();
        }
    }

    private static void Look(PartResult part) => Promise.Keep(part.ToString().Length > 0 && part.IsWhole == (part.Missing.Length == 0), "none missing");

    private static void Look(ReliabilityRun part)
    {
        Promise.Keep(part.ToString().Length > 0, "a part has a text");
        foreach (MeasureSummary measure in part.Measures)
            Promise.Keep(measure.ToString()!.Length > 0, "a measure has a text");
    }

    /// <summary>A part with the SHA-256 of its lines, each with a line feed, and its end.</summary>
    private static string Sealed(string part)
    {
        int at = part.LastIndexOf(Checksum, StringComparison.Ordinal);
        var lines = new StringBuilder();
        using var reader = new StringReader(at < 0 ? part : part[..at]);
        while (reader.ReadLine() is { } line)
            lines.Append(line).Append('\n');
        string hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(lines.ToString())));
        return $"{lines}checksum {hash}{End}";
    }
}
