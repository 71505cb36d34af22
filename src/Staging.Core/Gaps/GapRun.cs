using System.Collections.Immutable;
using Staging.Core.Fronts;
using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>A finished gap run. It holds the problem and the options that made it.</summary>
/// <remarks>Immutable; may be read from any thread. Made by <see cref="GapProblem.Solve"/>.</remarks>
public sealed class GapRun
{
    internal GapRun(in GapRunData data)
    {
        (Problem, Model, Options, Ledger, Failure) =
            (data.Problem, data.Model, data.Options, data.Ledger, data.Failure);
        Statistics = new SolverStatistics(data.Statistics);
        (GapParameters p, IgnitionTracker ignition) = (data.Parameters, data.Ignition);
        Course = data.Course;
        // What a resolved run saw behind the last state that is kept is not told: nobody could look at it.
        double end = data.End;
        Events = [.. data.Events.InOrder.Select(e => new GapEvent(e.Kind, e.Time)).Where(e => e.Time.Seconds <= end)];
        Outcome = new OutcomeDiagnosis(p, ignition, Events, data.Failure, data.End).Outcome;
        PeakGaugePressure = Pressure.FromPascals(ignition.PeakPressure - p.OutsidePressure);
        PeakGrainSurface = Temperature.FromKelvins(ignition.PeakSurface);
        PeakGrainSurfaceAfterOpening = ignition.PeakSurfaceAfterOpening is { } after ? Temperature.FromKelvins(after) : null;
        End = Duration.FromSeconds(data.End);
    }

    /// <summary>What was solved.</summary>
    public GapProblem Problem { get; }

    /// <summary>How the gas was modelled.</summary>
    public GapModel Model { get; }

    /// <summary>How it was integrated.</summary>
    public SolverOptions Options { get; }

    /// <summary>How it ended.</summary>
    public GapOutcome Outcome { get; }

    /// <summary>
    /// Why the solver gave up; null for a run that came to its end. Its outcome is then
    /// <see cref="GapOutcome.NotSolved"/>.
    /// </summary>
    public SolverFailure? Failure { get; }

    /// <summary>What happened, in order.</summary>
    public ImmutableArray<GapEvent> Events { get; }

    /// <summary>Highest gap pressure above the outside until the joint opened.</summary>
    public Pressure PeakGaugePressure { get; }

    /// <summary>
    /// Highest grain surface temperature until the joint opened; with motors in contact, as long after that as the core
    /// of the booster's jet reached the throat.
    /// </summary>
    public Temperature PeakGrainSurface { get; }

    /// <summary>
    /// Highest grain surface temperature once the joint had opened; null where it did not open, or the run ended there
    /// (<see cref="GapProblem.AfterOpening"/>). Above the ignition temperature it may light all the same, but nothing
    /// guides the gas any more.
    /// </summary>
    public Temperature? PeakGrainSurfaceAfterOpening { get; }

    /// <summary>
    /// Length of the run: when the joint opened (later by <see cref="GapProblem.AfterOpening"/>), the gap was spent,
    /// the horizon was reached, or the solver gave up.
    /// </summary>
    public Duration End { get; }

    /// <summary>Mass and energy accounted for.</summary>
    public GapLedger Ledger { get; }

    /// <summary>Work done.</summary>
    public SolverStatistics Statistics { get; }

    /// <summary>
    /// The gas along the tube at the times that <see cref="GapModel.OneDimensional.ProfileTimes"/> asked for and the
    /// run reached; empty for other models.
    /// </summary>
    public ImmutableArray<GapProfile> Profiles => Course.Profiles;

    /// <summary>The whole course of the run.</summary>
    internal GapHistory Course { get; } = null!;

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
    /// <param name="interval">
    /// Sampling interval [s], 1 ns to 10 s; at least a millionth of <see cref="End"/>, so that no more than a million
    /// moments are held.
    /// </param>
    /// <returns>The columns.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public GapColumns Sample(Duration interval) =>
        new(Course, End.Seconds, Guard.In(interval, Math.Max(1e-9, 1e-6 * End.Seconds), 10, nameof(interval)).Seconds);

    /// <summary>How the front travelled.</summary>
    /// <param name="mixing">What lets the front grow thick.</param>
    /// <returns>Arrivals, speed, thickness and heat lost on the way.</returns>
    public FrontTravel FrontTravel(FrontMixing mixing)
    {
        ArgumentNullException.ThrowIfNull(mixing);
        return new FrontTravel(this, mixing);
    }

    /// <summary>What has heated the grain up to a moment.</summary>
    /// <param name="time">Time since burn-through [s], 0 to <see cref="End"/>.</param>
    /// <returns>Fluxes at that moment, and doses by the trapezoidal rule on steps of at most 20 microseconds.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the run.</exception>
    public GrainHeat HeatAt(Duration time) => new(Course, Guard.In(time, 0, End.Seconds, nameof(time)));

    /// <summary>What has heated the grain up to the moment it was lit.</summary>
    /// <returns>Fluxes and doses; null when it was not lit.</returns>
    public GrainHeat? HeatAtLighting() => TimeOf(GapEventKind.Lit) is { } lit ? HeatAt(lit) : null;

    /// <summary>The outcome, the events and the peaks.</summary>
    /// <returns>Some lines.</returns>
    public override string ToString() =>
        Invariant.Text($"{Outcome}\nEvents: {string.Join(", ", Events)}; end at {End.Milliseconds:F2} ms.\n"
        + $"Peaks: {PeakGaugePressure.Kilopascals:F1} kPa gauge in the gap, {PeakGrainSurface.Kelvins:F0} K at the grain.");

    private GapSnapshot Snapshot(double time) => new(Duration.FromSeconds(time), Course.At(time));
}
