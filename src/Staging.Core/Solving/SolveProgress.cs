using UnitsNet;

namespace Staging.Core.Solving;

/// <summary>Progress of a run. Reported in order, on the thread that solves.</summary>
public sealed class SolveProgress
{
    internal SolveProgress(Duration time, double fraction) => (Time, Fraction) = (time, fraction);

    /// <summary>Time reached on the clock of the run [s].</summary>
    public Duration Time { get; }

    /// <summary>
    /// Share of the longest possible run [-], 0 to 1; 1 is reported once, before the result is returned.
    /// </summary>
    public double Fraction { get; }
}
