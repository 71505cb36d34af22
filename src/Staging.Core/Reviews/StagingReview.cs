using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans;

namespace Staging.Core.Reviews;

/// <summary>A finished review: the flight, every gap, and the cautions. It holds the plan that made it.</summary>
/// <remarks>It informs. Local codes, the range safety officer and licensed practice decide.</remarks>
public sealed record StagingReview
{
    internal StagingReview()
    {
    }

    /// <summary>What was reviewed.</summary>
    public required StagingPlan Plan { get; init; }

    /// <summary>The flight, with every body and every unlit case followed to the ground.</summary>
    public required FlightRun Flight { get; init; }

    /// <summary>Every gap that was reached, lowest first.</summary>
    public required ImmutableArray<GapReview> Gaps { get; init; }

    /// <summary>What to mind, each with its rule.</summary>
    public required ImmutableArray<Caution> Cautions { get; init; }

    /// <summary>Findings of the check that did not stop the review.</summary>
    public required ImmutableArray<ModelFinding> Findings { get; init; }

    /// <summary>Whether every staging of the plan came about and lit.</summary>
    public bool EveryStageLights =>
        Flight.Stagings.Length == Plan.Flight.Stages.Length - 1 && Flight.Stagings.All(s => s.Lit);
}
