using System.Text;

namespace Staging.Core.Plans.Reading;

/// <summary>Reads texts that come from elsewhere: files alone, and no more of them than a plan may hold.</summary>
internal static class BoundedText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Opens a file as UTF-8. What has no length is a device, a pipe or empty, and is not opened.</summary>
    /// <exception cref="IOException">It is no file with something in it.</exception>
    public static StreamReader Open(string path)
    {
        FileSystemInfo file = File.ResolveLinkTarget(path, returnFinalTarget: true) ?? new FileInfo(path);
        if (file is FileInfo { Exists: true, Length: 0 })
            throw new IOException("it is empty, or no file but a device or a pipe.");
        return new StreamReader(path, Strict);
    }

    /// <summary>
    /// All of a text; null where it is longer than a plan may be. An endless one is left at that length.
    /// </summary>
    public static string? ReadAll(TextReader reader)
    {
        var text = new StringBuilder();
        char[] buffer = new char[8192];
        while (reader.Read(buffer, 0, buffer.Length) is > 0 and int read)
        {
            text.Append(buffer, 0, read);
            if (text.Length > InputLimits.MaxCharacters)
                return null;
        }

        return text.ToString();
    }

    /// <summary>Whether a file below a folder is reached by a link, which could lead out of it.</summary>
    public static bool IsLinked(string folder, string name)
    {
        string path = folder;
        foreach (string part in name.Split('/'))
        {
            path = Path.Combine(path, part);
            if (new FileInfo(path).LinkTarget is not null)
                return true;
        }

        return false;
    }
}
