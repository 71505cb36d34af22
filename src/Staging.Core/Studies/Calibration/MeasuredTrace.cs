using System.Collections.Immutable;
using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>A measured history: times and values, for example of a gap pressure.</summary>
public sealed record MeasuredTrace
{
    private MeasuredTrace(string name, EquatableArray<double> times, EquatableArray<double> values) =>
        (Name, Times, Values) = (name, times, values);

    /// <summary>Head of the column of values, for example <c>gauge_Pa</c>.</summary>
    public string Name { get; }

    /// <summary>Times [s], rising.</summary>
    public EquatableArray<double> Times { get; }

    /// <summary>Values, in the unit that the name states [Unit].</summary>
    public EquatableArray<double> Values { get; }

    /// <summary>Makes a trace from its columns.</summary>
    /// <param name="name">Name of the values, with their unit, for example <c>gauge_Pa</c>.</param>
    /// <param name="times">Times [s], rising; two or more.</param>
    /// <param name="values">Values [Unit], one for each time.</param>
    /// <returns>The trace.</returns>
    /// <exception cref="ArgumentException">The name is blank or holds control characters; the columns differ in length,
    /// are too short, hold a number that is not finite, or the times do not rise.</exception>
    public static MeasuredTrace Of(string name, EquatableArray<double> times, EquatableArray<double> values)
    {
        Guard.NotBlank(name, nameof(name));
        if (times.Length != values.Length || times.Length < 2)
            throw new ArgumentException("A trace needs at least two times and one value for each.", nameof(times));
        for (int i = 0; i < times.Length; i++)
        {
            if (!double.IsFinite(times[i]) || !double.IsFinite(values[i]) || (i > 0 && times[i] <= times[i - 1]))
                throw new ArgumentException(Invariant.Text($"Row {i + 1}: time {times[i]:G6} s and value {values[i]:G6} have to be "
                    + $"finite, and times have to rise."), nameof(times));
        }

        return new MeasuredTrace(name, times, values);
    }

    /// <summary>
    /// Reads comma-separated values: a head <c>time_s,name_Unit</c>, then a line a sample, with decimal points.
    /// </summary>
    /// <param name="reader">Where from.</param>
    /// <returns>The trace.</returns>
    /// <exception cref="FormatException">The text is no such table; the message names the line.</exception>
    public static MeasuredTrace ReadCsv(TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        string[] head = (reader.ReadLine() ?? "").TrimStart('\uFEFF').Split(',');
        if (head.Length != 2 || head[0].Trim() != "time_s" || head[1].Trim().Length == 0)
            throw new FormatException(
                "Line 1 of the trace has to be the head: time_s, a comma, and the name of the values with their unit, such as gauge_Pa.");
        var times = ImmutableArray.CreateBuilder<double>();
        var values = ImmutableArray.CreateBuilder<double>();
        for (int line = 2; reader.ReadLine() is { } text; line++)
        {
            if (string.IsNullOrWhiteSpace(text))
                continue;
            string[] cells = text.Split(',');
            if (cells.Length != 2 || !TryNumber(cells[0], out double time) || !TryNumber(cells[1], out double value))
                throw new FormatException(
                    $"Line {line} of the trace, \"{Excerpt.Of(text)}\", is not two finite numbers separated by a comma.");
            times.Add(time);
            values.Add(value);
        }

        try
        {
            return Of(head[1].Trim(), times.ToImmutable(), values.ToImmutable());
        }
        catch (ArgumentException fault)
        {
            throw new FormatException(Guard.MessageOf(fault), fault);
        }
    }

    /// <summary>Name, number of samples and range of times.</summary>
    /// <returns>For example <c>gauge_Pa: 60 samples from 0 to 2.95 s</c>.</returns>
    public override string ToString() => Invariant.Text($"{Name}: {Times.Length} samples from {Times[0]:G4} to {Times[^1]:G4} s");

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}
