using System.Runtime.InteropServices;
using System.Text;
using Staging.Core.Plans;

namespace Staging.Core.Native;

/// <summary>UTF-8 texts that end with a zero: those of the caller, and those that the caller frees.</summary>
internal static unsafe class NativeText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads the text of a plan.</summary>
    public static string ReadPlan(byte* text)
    {
        try
        {
            return Strict.GetString(Bytes(text, nameof(text)));
        }
        catch (DecoderFallbackException e)
        {
            throw new PlanFormatException(FormattableString.Invariant($"the text is not UTF-8 at byte {e.Index + 1}."), e);
        }
    }

    /// <summary>Reads the path of a file.</summary>
    public static string ReadPath(byte* path)
    {
        try
        {
            return Strict.GetString(Bytes(path, nameof(path)));
        }
        catch (DecoderFallbackException e)
        {
            throw new ArgumentException(FormattableString.Invariant($"path is not UTF-8 at byte {e.Index + 1}."), e);
        }
    }

    /// <summary>Copies a text to where the caller frees it, with <c>staging_text_free</c>.</summary>
    public static byte* Give(string text)
    {
        int length = Encoding.UTF8.GetByteCount(text);
        byte* copy = (byte*)NativeMemory.Alloc((nuint)length + 1);
        Encoding.UTF8.GetBytes(text, new Span<byte>(copy, length));
        copy[length] = 0;
        return copy;
    }

    /// <summary>Takes a text back.</summary>
    public static void Free(byte* text) => NativeMemory.Free(text);

    private static ReadOnlySpan<byte> Bytes(byte* text, string name) => text is null
        ? throw new ArgumentException($"{name} is NULL.")
        : MemoryMarshal.CreateReadOnlySpanFromNullTerminated(text);
}
