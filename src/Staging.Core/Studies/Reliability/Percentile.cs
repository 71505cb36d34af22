namespace Staging.Core.Studies;

/// <summary>A percentile of a measure.</summary>
/// <param name="Percent">Which one [%].</param>
/// <param name="Value">Its value [Unit].</param>
/// <param name="Interval">Where the true one lies.</param>
/// <param name="IntervalIsFull">Whether there were enough cases for that confidence; else an end is the lowest or
/// highest case, and the confidence is not reached.</param>
public sealed record Percentile(double Percent, double Value, Interval Interval, bool IntervalIsFull);
