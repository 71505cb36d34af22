using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Staging.Core.Plans.Reading;

namespace Staging.Core.Plans;

/// <summary>From text to JSON values and back.</summary>
internal static class JsonText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What is said of a text that is longer than it may be.</summary>
    public static readonly string TooLong = Invariant.Text($"the text is longer than {InputLimits.MaxCharacters} characters.");

    private static readonly JsonDocumentOptions Bounded = new() { MaxDepth = InputLimits.MaxDepth };

    private static readonly JsonWriterOptions Readable = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping
    };

    /// <summary>The values of a text; null when it is not JSON, which is reported with line and column.</summary>
    public static JsonDocument? Parse(string json, ReadContext reading)
    {
        if (json.Length > InputLimits.MaxCharacters)
        {
            reading.Report("$", TooLong);
            return null;
        }

        byte[] text;
        try
        {
            text = Strict.GetBytes(json);
        }
        catch (EncoderFallbackException e)
        {
            reading.Report("$", $"the text holds half a surrogate pair at character {e.Index + 1}; it is not Unicode.");
            return null;
        }

        try
        {
            return JsonDocument.Parse(text, Bounded);
        }
        catch (JsonException e)
        {
            reading.Report("$", Located(e, text));
            return null;
        }
    }

    /// <summary>Runs a writer and gives its text, indented and ended by a line break.</summary>
    public static string Of(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, Readable))
            write(writer);
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>A syntax error with line and column, both counted from 1, the column in characters.</summary>
    private static string Located(JsonException error, byte[] text)
    {
        long line = error.LineNumber ?? 0;
        int start = 0;
        for (long i = 0; i < line; i++)
            start += text.AsSpan(start).IndexOf((byte)'\n') + 1;
        int length = (int)Math.Min(error.BytePositionInLine ?? 0, text.Length - start);
        int column = Encoding.UTF8.GetCharCount(text.AsSpan(start, length)) + 1;
        return Invariant.Text($"line {line + 1}, column {column}: this is not JSON: {JsonFault.InWords(error, text, start + length)}");
    }
}
