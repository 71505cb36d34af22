namespace Staging.Core.Gaps;

/// <summary>The course of a gap run as columns of equal length, in SI units, for plots and notebooks.</summary>
/// <remarks>Immutable; may be read from any thread. Made by <see cref="GapRun.Sample"/>.</remarks>
public sealed class GapColumns
{
    private readonly double[] time;
    private readonly double[][] columns;

    internal GapColumns(GapHistory course, double end, double interval)
    {
        time = [.. Enumerable.Range(0, (int)Math.Ceiling(end / interval * (1 - 1e-12)) + 1).Select(i => Math.Min(i * interval, end))];
        columns = [.. Enumerable.Range(0, GapReading.Channels).Select(_ => new double[time.Length])];
        for (int i = 0; i < time.Length; i++)
        {
            GapReading reading = course.At(time[i]);
            for (int k = 0; k < columns.Length; k++)
                columns[k][i] = reading[(GapChannel)k];
        }
    }

    /// <summary>Time since burn-through [s].</summary>
    public ReadOnlyMemory<double> Time_s => time;

    /// <summary>One column [in the unit that <see cref="UnitOf"/> tells].</summary>
    /// <param name="channel">Which.</param>
    /// <returns>A number for each moment.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such channel.</exception>
    public ReadOnlyMemory<double> this[GapChannel channel] => columns[Place(channel)];

    /// <summary>Unit of a channel.</summary>
    /// <param name="channel">Which.</param>
    /// <returns>For example <c>Pa</c> or <c>W/m2</c>; <c>-</c> for a share.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such channel.</exception>
    public static string UnitOf(GapChannel channel) => GapReading.UnitOf((GapChannel)Place(channel));

    /// <summary>
    /// Writes time and channels as comma-separated values: a head with the units, then a line for each moment; numbers
    /// so that reading gives the same bits.
    /// </summary>
    /// <param name="writer">Where to.</param>
    public void WriteCsv(TextWriter writer) => ChannelTable.WriteCsv<GapChannel>(writer, time, columns, UnitOf);

    /// <summary>How many moments there are, and up to when.</summary>
    /// <returns>One line.</returns>
    public override string ToString() =>
        Invariant.Text($"{columns.Length} channels of a gap at {time.Length} moments up to {time[^1] * 1e3:G4} ms.");

    private static int Place(GapChannel channel) =>
        Enum.IsDefined(channel)
            ? (int)channel
            : throw new ArgumentOutOfRangeException(nameof(channel), channel, "There is no such channel.");
}
