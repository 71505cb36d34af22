using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;

namespace Staging.Core.Reviews;

/// <summary>One plan in, one review out.</summary>
public static class StagingReviewer
{
    /// <summary>
    /// Flies the plan, takes the run of every gap from the flight that asked for it, sizes its vents, and adds cautions.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How the flight is computed; null for the defaults. Its scope is not asked: a review
    /// follows every body and every failure.</param>
    /// <param name="cancellationToken">Stops the review.</param>
    /// <returns>The review. A stage that does not light is a result, not an exception.</returns>
    /// <exception cref="InvalidModelException"><see cref="StagingPlan.Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static StagingReview Review(this StagingPlan plan, FlightOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<ModelFinding> findings = plan.Check();
        InvalidModelException.ThrowOnError(findings);
        FlightRun flight = plan.Flight.Fly((options ?? FlightOptions.Default) with { Scope = FlightScope.Everything },
            cancellationToken: cancellationToken);
        ImmutableArray<GapReview> gaps = [.. flight.Stagings.Select(s => ReviewGap(plan, s, cancellationToken)).OfType<GapReview>()];
        return new StagingReview
        {
            Plan = plan,
            Flight = flight,
            Gaps = gaps,
            Cautions = CautionRules.For(plan, flight, gaps),
            Findings = findings,
        };
    }

    private static GapReview? ReviewGap(StagingPlan plan, StagingReport staging, CancellationToken cancel)
    {
        Stage upper = plan.Flight.Stages.First(s => s.Name == staging.UpperStage);
        if (upper.Gap() is not { } gap)
            return null;
        GapRun run = staging.GapRun();
        return new GapReview
        {
            Staging = staging,
            Run = run,
            Advice = run.Problem.SizeVents(gap.Layout, gap.Model, gap.Solver, cancel),
        };
    }
}
