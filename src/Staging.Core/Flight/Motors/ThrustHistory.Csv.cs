using System.Globalization;

namespace Staging.Core.Flight;

public sealed partial class ThrustHistory
{
    private const string TimeColumn = "time_s";
    private const string ThrustColumn = "thrust_N";
    private const string Header = TimeColumn + "," + ThrustColumn;
    private const double LongestTime = 1000;
    private const double LargestThrust = 1e7;

    /// <summary>
    /// Least total impulse [N s], so that propellant over impulse is a number: a judgement, far below any motor.
    /// </summary>
    private const double LeastImpulse = 1e-9;

    /// <summary>
    /// Reads a curve from plain CSV: the header <c>time_s,thrust_N</c>, then one point a line, point as decimal mark.
    /// Blank lines and lines that begin with <c>#</c> are ignored, also above the header.
    /// </summary>
    /// <param name="reader">The text.</param>
    /// <returns>The curve.</returns>
    /// <exception cref="FormatException">The text breaks a rule; the message names line, column and value.</exception>
    public static ThrustHistory FromCsv(TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        var times = new List<double>();
        var thrusts = new List<double>();
        var lines = new List<int>();
        bool headerSeen = false;
        int line = 0;
        while (reader.ReadLine() is { } text)
        {
            line++;
            ReadOnlySpan<char> row = text.AsSpan().Trim();
            if (row.IsEmpty || row[0] == '#')
                continue;
            if (!headerSeen)
            {
                headerSeen = row.SequenceEqual(Header)
                    ? true
                    : throw new FormatException($"Line {line}: the header must read '{Header}'; it reads '{Excerpt.Of(row)}'.");
                continue;
            }

            int comma = row.IndexOf(',');
            if (comma < 0 || row[(comma + 1)..].Contains(','))
                throw new FormatException($"Line {line}: two columns, {Header}, are required; the line reads '{Excerpt.Of(row)}'.");
            times.Add(Number(row[..comma], line, TimeColumn, "s"));
            thrusts.Add(Number(row[(comma + 1)..], line, ThrustColumn, "N"));
            lines.Add(line);
        }

        if (!headerSeen)
            throw new FormatException($"The header '{Header}' is missing; the text has {line} lines.");
        double[] time = [.. times], thrust = [.. thrusts];
        if (Fault(time, thrust) is { } fault)
            throw new FormatException(lines.Count > fault.Point
                ? $"Line {lines[fault.Point]}, column {fault.Column}: {fault.Message}"
                : fault.Message);
        return new ThrustHistory(time, thrust);
    }

    private static double Number(ReadOnlySpan<char> text, int line, string column, string unit) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value
            : throw new FormatException($"Line {line}, column {column}: '{Excerpt.Of(text.Trim())}' is not a number [{unit}].");

    /// <summary>The first rule broken, or null.</summary>
    private static CurveFault? Fault(ReadOnlySpan<double> time, ReadOnlySpan<double> thrust)
    {
        if (time.Length < 2)
            return new CurveFault(0, TimeColumn, Invariant.Text($"a thrust history needs two points or more; it has {time.Length}."));
        bool pushes = false;
        double impulse = 0;
        for (int i = 0; i < time.Length; i++)
        {
            if (!(time[i] >= 0 && time[i] <= LongestTime))
                return new CurveFault(i, TimeColumn,
                    Invariant.Text($"the time is {time[i]:G9} s; it must be between 0 and {LongestTime:G6} s."));
            if (i > 0 && !(time[i] > time[i - 1]))
                return new CurveFault(i, TimeColumn,
                    Invariant.Text($"the time is {time[i]:G9} s after {time[i - 1]:G9} s; times must rise."));
            if (!(thrust[i] >= 0 && thrust[i] <= LargestThrust))
                return new CurveFault(i, ThrustColumn,
                    Invariant.Text($"the thrust is {thrust[i]:G9} N; it must be between 0 and {LargestThrust:G6} N."));
            pushes |= thrust[i] > 0;
            impulse += i > 0 ? 0.5 * (thrust[i - 1] + thrust[i]) * (time[i] - time[i - 1]) : 0;
        }

        if (!pushes)
            return new CurveFault(0, ThrustColumn, "the thrust is zero throughout; some point must be above 0 N.");
        return impulse >= LeastImpulse ? null : new CurveFault(0, ThrustColumn,
            Invariant.Text($"the total impulse is {impulse:G6} N s; it must be {LeastImpulse:G6} N s or more."));
    }

    private readonly record struct CurveFault(int Point, string Column, string Message);
}
