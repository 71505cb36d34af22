using System.Collections.Immutable;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>A finished gap run. It holds the problem and the options that made it.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed record GapRun
{
    internal GapRun()
    {
    }

    /// <summary>What was solved.</summary>
    public required GapProblem Problem { get; init; }

    /// <summary>How the gas was modelled.</summary>
    public required GapModel Model { get; init; }

    /// <summary>How it was integrated.</summary>
    public required SolverOptions Options { get; init; }

    /// <summary>How it ended.</summary>
    public required GapOutcome Outcome { get; init; }

    /// <summary>
    /// Why the solver gave up; null for a run that came to its end. Its outcome is then
    /// <see cref="GapOutcome.NotSolved"/>.
    /// </summary>
    public SolverFailure? Failure => (Outcome as GapOutcome.NotSolved)?.Failure;

    /// <summary>What happened, in order.</summary>
    public required ImmutableArray<GapEvent> Events { get; init; }

    /// <summary>Highest gap pressure above the outside.</summary>
    public required Pressure PeakGaugePressure { get; init; }

    /// <summary>
    /// Highest grain surface temperature until the joint opened; with motors in contact, as long after that as the core
    /// of the booster's jet reached the throat.
    /// </summary>
    public required Temperature PeakGrainSurface { get; init; }

    /// <summary>
    /// Highest grain surface temperature once the joint had opened; null where it did not open, or the run ended there
    /// (<see cref="GapProblem.AfterOpening"/>). Above the ignition temperature it may light all the same, but nothing
    /// guides the gas any more.
    /// </summary>
    public Temperature? PeakGrainSurfaceAfterOpening { get; init; }

    /// <summary>Length of the run: when the joint opened, the gap was spent, or the horizon was reached.</summary>
    public required Duration End { get; init; }

    /// <summary>Mass and energy accounted for.</summary>
    public required GapLedger Ledger { get; init; }

    /// <summary>Work done.</summary>
    public required SolverStatistics Statistics { get; init; }

    /// <summary>
    /// The gas along the tube at the times that <see cref="GapModel.OneDimensional.ProfileTimes"/> asked for and the
    /// run reached; empty for other models.
    /// </summary>
    public ImmutableArray<GapProfile> Profiles => Course.Profiles;

    /// <summary>The whole course of the run.</summary>
    internal GapHistory Course { get; init; } = null!;

    /// <summary>When something first happened; null when it did not.</summary>
    /// <param name="kind">What.</param>
    /// <returns>The time since burn-through, or null.</returns>
    public Duration? TimeOf(GapEventKind kind) => Events.FirstOrDefault(e => e.Kind == kind)?.Time;

    /// <summary>The state at a time.</summary>
    /// <param name="time">Time since burn-through [s], 0 to <see cref="End"/>.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public GapSnapshot At(Duration time) => Snapshot(Guard.In(time, 0, End.Seconds, nameof(time)).Seconds);

    /// <summary>The course as columns at a fixed interval, the last moment included.</summary>
    /// <param name="interval">Sampling interval [s], 1 ns to 10 s.</param>
    /// <returns>The columns.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public GapColumns Sample(Duration interval) =>
        new(Course, End.Seconds, Guard.In(interval, 1e-9, 10, nameof(interval)).Seconds);

    private GapSnapshot Snapshot(double time) => new(Duration.FromSeconds(time), Course.At(time));
}
