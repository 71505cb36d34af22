using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>What a model hands over at the end of a run.</summary>
internal readonly record struct GapRunData
{
    public required GapProblem Problem { get; init; }

    public required GapModel Model { get; init; }

    public required SolverOptions Options { get; init; }

    public required GapParameters Parameters { get; init; }

    public required GapHistory Course { get; init; }

    public required IgnitionTracker Ignition { get; init; }

    public required RunEvents Events { get; init; }

    /// <summary>Time at which the run ended [s].</summary>
    public required double End { get; init; }

    public required GapLedger Ledger { get; init; }

    public required SolverWork Statistics { get; init; }

    public required SolverFailure? Failure { get; init; }
}
