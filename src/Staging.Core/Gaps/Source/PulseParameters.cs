using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Fragments that burn as a half-sine pulse.</summary>
/// <param name="Mass">Their mass [kg].</param>
/// <param name="Time">Time over which they burn [s].</param>
internal sealed record PulseParameters(double Mass, double Time)
{
    /// <summary>Mass burnt per second, a time after the start [kg/s].</summary>
    public T Rate<T>(T t)
        where T : struct, IReal<T> => t.Value < Time ? Mass * Math.PI / (2 * Time) * T.Sin(Math.PI * t / Time) : 0;

    /// <summary>Mass burnt between two times after the start [kg].</summary>
    public double Between(double from, double to) =>
        0.5 * Mass * (Math.Cos(Math.PI * Math.Min(from, Time) / Time) - Math.Cos(Math.PI * Math.Min(to, Time) / Time));
}
