using UnitsNet;

namespace Staging.Core.Solving;

/// <summary>Why a run stopped early: a value, not an exception, so that a study can count it.</summary>
public sealed class SolverFailure
{
    internal SolverFailure(SolverFailureKind kind, Duration time, string message) => (Kind, Time, Message) = (kind, time, message);

    /// <summary>What went wrong.</summary>
    public SolverFailureKind Kind { get; }

    /// <summary>When it went wrong, on the clock of the run.</summary>
    public Duration Time { get; }

    /// <summary>The same in a sentence, with the numbers.</summary>
    public string Message { get; }

    /// <summary>Time and reason on one line.</summary>
    /// <returns>
    /// For example <c>at 0.0123 s: The step fell below the spacing of times at 0.0123 s.</c>
    /// </returns>
    public override string ToString() => Invariant.Text($"at {Time.Seconds:G4} s: {Message}");

    /// <summary>A failure at a plain time [s].</summary>
    internal static SolverFailure At(SolverFailureKind kind, double time, string message) => new(kind, Duration.FromSeconds(time), message);
}
