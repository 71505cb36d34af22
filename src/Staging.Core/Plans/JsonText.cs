using System.Text;
using System.Text.Json;

namespace Staging.Core.Plans;

/// <summary>JSON as this library writes it: indented, lines ended by a line feed, one at the end.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n" };

    /// <summary>The text that a writing produces.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, Indented))
            write(writer);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }
}
