using System.Globalization;

namespace Staging.Core;

/// <summary>Columns of one length as comma-separated values: a head with the units, then a line a row.</summary>
internal static class ChannelTable
{
    /// <summary>
    /// Writes a time and its channels; numbers so that reading gives the same bits, lines end with a line feed.
    /// </summary>
    public static void WriteCsv<TChannel>(
        TextWriter writer, ReadOnlySpan<double> time, IReadOnlyList<double[]> columns, Func<TChannel, string> unitOf)
        where TChannel : struct, Enum
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.Write("time [s]");
        foreach (TChannel channel in Enum.GetValues<TChannel>())
            writer.Write($",{Words(channel.ToString())} [{unitOf(channel)}]");
        writer.Write('\n');
        for (int row = 0; row < time.Length; row++)
        {
            writer.Write(Cell(time[row]));
            foreach (double[] column in columns)
                writer.Write($",{Cell(column[row])}");
            writer.Write('\n');
        }
    }

    private static string Cell(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A channel's name in words: <c>GapPressure</c> is "gap pressure".</summary>
    private static string Words(string channel) =>
        string.Concat(channel.Select((c, i) => char.IsUpper(c) ? $"{(i > 0 ? " " : "")}{char.ToLowerInvariant(c)}" : $"{c}"));
}
