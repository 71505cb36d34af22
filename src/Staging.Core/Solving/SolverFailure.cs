using UnitsNet;

namespace Staging.Core.Solving;

/// <summary>Why a run stopped short: a value, not an exception, so that a study can count it.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="Time">When it went wrong, on the clock of the run.</param>
/// <param name="Message">The same in words, with the numbers.</param>
public sealed record SolverFailure(SolverFailureKind Kind, Duration Time, string Message)
{
    /// <summary>A failure at a plain time [s].</summary>
    internal static SolverFailure At(SolverFailureKind kind, double time, string message) => new(kind, Duration.FromSeconds(time), message);
}
