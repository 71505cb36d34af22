namespace Staging.Core.Studies;

/// <summary>A percentile of a measure.</summary>
public sealed class Percentile
{
    internal Percentile(double percent, double value, Interval interval, bool intervalIsFull) =>
        (Percent, Value, Interval, IntervalIsFull) = (percent, value, interval, intervalIsFull);

    /// <summary>The percentage [%].</summary>
    public double Percent { get; }

    /// <summary>Its value [Unit].</summary>
    public double Value { get; }

    /// <summary>Its confidence interval.</summary>
    public Interval Interval { get; }

    /// <summary>
    /// Whether there were enough cases for that confidence; otherwise an end is the lowest or highest case, and
    /// the confidence is not reached.
    /// </summary>
    public bool IntervalIsFull { get; }

    /// <summary>Value and interval.</summary>
    /// <returns>For example <c>5 %: 10.9 (10.7 to 11.2 at 95 %)</c>.</returns>
    public override string ToString() =>
        Invariant.Text($"{Percent:G4} %: {Value:G4} ({Interval}{(IntervalIsFull ? "" : ", not reached: too few cases")})");
}
