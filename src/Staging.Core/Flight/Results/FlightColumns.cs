namespace Staging.Core.Flight;

/// <summary>The trajectory of a body as columns of equal length, in SI units, for plots and notebooks.</summary>
public sealed class FlightColumns
{
    /// <summary>Units of the channels, in their order.</summary>
    private static readonly string[] Units = ["m", "m/s", "m/s2", "kg", "N", "N", "-", "Pa"];

    private readonly double[] time;
    private readonly double[][] columns;

    internal FlightColumns(List<FlightRow> rows)
    {
        time = [.. rows.Select(r => r.Time)];
        columns = [.. Enumerable.Range(0, Units.Length).Select(k => rows.Select(r => r[(FlightChannel)k]).ToArray())];
    }

    /// <summary>Time from ignition of the lowest stage [s]; a jump has two rows at the same time.</summary>
    public ReadOnlyMemory<double> Time_s => time;

    /// <summary>One column [in the unit given by <see cref="UnitOf"/>].</summary>
    /// <param name="channel">Which.</param>
    /// <returns>A number for each row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such channel.</exception>
    public ReadOnlyMemory<double> this[FlightChannel channel] => columns[(int)Guard.Defined(channel, nameof(channel))];

    /// <summary>Unit of a channel.</summary>
    /// <param name="channel">Which.</param>
    /// <returns>For example <c>m/s</c>; <c>-</c> for the Mach number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such channel.</exception>
    public static string UnitOf(FlightChannel channel) => Units[(int)Guard.Defined(channel, nameof(channel))];

    /// <summary>
    /// Writes time and channels as comma-separated values: a head with the units, then a line for each row; numbers
    /// so that reading gives the same bits.
    /// </summary>
    /// <param name="writer">Where to.</param>
    public void WriteCsv(TextWriter writer) => ChannelTable.WriteCsv<FlightChannel>(writer, time, columns, UnitOf);

    /// <summary>The number of rows, and the last time.</summary>
    /// <returns>One line.</returns>
    public override string ToString() =>
        Invariant.Text($"{columns.Length} channels of a flight in {time.Length} rows up to {time[^1]:G4} s.");
}
