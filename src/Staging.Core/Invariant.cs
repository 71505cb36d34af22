using System.Globalization;
using System.Runtime.CompilerServices;

namespace Staging.Core;

/// <summary>Text whose numbers read the same whatever the culture of the machine.</summary>
internal static class Invariant
{
    /// <summary>Writes an interpolated text.</summary>
    public static string Text(Handler text) => text.ToStringAndClear();

    /// <summary>An interpolated text on its way to a string.</summary>
    [InterpolatedStringHandler]
    public ref struct Handler(int literalLength, int formattedCount)
    {
        private DefaultInterpolatedStringHandler text = new(literalLength, formattedCount, CultureInfo.InvariantCulture);

        public void AppendLiteral(string value) => text.AppendLiteral(value);

        public void AppendFormatted<T>(T value) => text.AppendFormatted(value);

        public void AppendFormatted<T>(T value, string? format) => text.AppendFormatted(value, format);

        public void AppendFormatted<T>(T value, int alignment) => text.AppendFormatted(value, alignment);

        public void AppendFormatted<T>(T value, int alignment, string? format) => text.AppendFormatted(value, alignment, format);

        public string ToStringAndClear() => text.ToStringAndClear();
    }
}
