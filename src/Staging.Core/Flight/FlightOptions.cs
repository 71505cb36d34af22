using Staging.Core.Solving;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Options of a flight computation. The defaults are the numbers stated here.</summary>
public sealed record FlightOptions
{
    /// <summary>The defaults.</summary>
    public static FlightOptions Default { get; } = new();

    /// <summary>
    /// Tolerances and limits of the integration; the number of steps is one allowance for all bodies of a run.
    /// </summary>
    public SolverOptions Solver { get; init => field = Guard.NotNull(value); } = SolverOptions.Default;

    /// <summary>The bodies and cases followed. The default is everything.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the scopes.</exception>
    public FlightScope Scope { get; init => field = Guard.Defined(value); } = FlightScope.Everything;

    /// <summary>
    /// Whether the trajectory of each body is kept, for columns and plots. The default is yes; a study of single
    /// numbers does not need it.
    /// </summary>
    public bool KeepTracks { get; init; } = true;

    /// <summary>
    /// How late a motor lights in the case of late ignition [s], 1 ms to 100 s; null leaves that case out. The default
    /// is 1 s: judgement, the order of magnitude for a grain that smoulders before it ignites.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration? LateIgnition { get; init => field = value is { } t ? Guard.In(t, 1e-3, 100) : null; } = Duration.FromSeconds(1);

    /// <summary>
    /// Time from ignition after which a body still in the air is no longer followed [s], 1 s to 100000 s. The default
    /// is one hour.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration LatestTime { get; init => field = Guard.In(value, 1, 100_000); } = Duration.FromHours(1);
}
