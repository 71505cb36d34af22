using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Plans;
using Staging.Core.Sizing;
using Staging.Core.Studies;

namespace Staging.Core.Reviews;

/// <summary>What can be asked of a plan: its review, its odds, and its gaps as the flight meets them.</summary>
public static partial class StagingReviewer
{
    /// <summary>
    /// Flies the plan, takes the run of every gap from the flight that asked for it, sizes its vents, and adds
    /// cautions.
    /// </summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How the flight is computed; null for the defaults. Its scope is not asked: a review
    /// follows every body and every failure.</param>
    /// <param name="cases">Cases of a quick study of the odds over what is judged, 1 to 1 million; 0 for none. See
    /// <see cref="Odds"/>.</param>
    /// <param name="cancellationToken">Stops the review.</param>
    /// <returns>The review. A stage that does not light is a result, not an exception.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of cases is outside its range.</exception>
    /// <exception cref="InvalidModelException"><see cref="StagingPlan.Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static StagingReview Review(this StagingPlan plan, FlightOptions? options = null, int cases = 60,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Guard.In(cases, 0, 1_000_000, nameof(cases));
        ImmutableArray<ModelFinding> findings = plan.Check();
        InvalidModelException.ThrowOnError(findings);
        FlightRun flight = plan.Flight.Fly((options ?? FlightOptions.Default) with { Scope = FlightScope.Everything },
            cancellationToken: cancellationToken);
        ImmutableArray<GapReview> gaps = [.. flight.Stagings.Select(s => ReviewGap(plan, s, cancellationToken)).OfType<GapReview>()];
        Odds? odds = cases > 0 && new OddsStudy(plan) is { HasInputs: true } study
            ? study.Run(cases, seed: 0, options: null, progress: null, cancellationToken)
            : null;
        return new StagingReview(plan, findings, flight, gaps, odds);
    }

    /// <summary>
    /// How often every stage lights when what is judged of the gaps is uncertain over its whole range: flies the plan
    /// again and again, each time with other values of the inputs of <see cref="GapInputs.Judged"/>.
    /// </summary>
    /// <remarks>
    /// Inputs are drawn independently of one another. Those whose names begin with <c>closures</c> belong to the model
    /// and have one value in all gaps of a case; the others are drawn for each gap. An input that a gap does not have,
    /// since its source is of another kind, is left out and listed in <see cref="Reviews.Odds.NotVaried"/>. A case
    /// costs one flight of the uppermost stage and one run of each gap that it reaches, with
    /// <see cref="Solving.SolverOptions.ForStudies"/> where the plan asks for nothing else: some 2 ms in all with
    /// <see cref="GapModel.TwoZone"/>, which is about 1 s for 400 cases on one core; some hundred times that with
    /// <see cref="GapModel.OneDimensional"/>.
    /// </remarks>
    /// <param name="plan">The plan.</param>
    /// <param name="cases">Cases, 1 to 1 million: of 400, a share of one half is known to 5 %.</param>
    /// <param name="seed">The seed; the same seed gives the same cases.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Told how far it has come, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the cases.</param>
    /// <returns>The odds: the same bits for any number of threads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of cases is outside its range.</exception>
    /// <exception cref="InvalidModelException"><see cref="StagingPlan.Check"/> reports errors, no stage is lit through
    /// a gap that has judged inputs, or a part of the cases was asked for.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static Odds Odds(this StagingPlan plan, int cases = 400, ulong seed = 0, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Guard.In(cases, 1, 1_000_000, nameof(cases));
        InvalidModelException.ThrowOnError(plan.Check());
        return new OddsStudy(plan).Run(cases, seed, options, progress, cancellationToken);
    }

    private static GapReview? ReviewGap(StagingPlan plan, StagingReport staging, CancellationToken cancel)
    {
        Stage upper = plan.Flight.Stages.First(s => s.Name == staging.UpperStage);
        if (upper.Gap() is not { } gap)
            return null;
        GapRun run = staging.GapRun();
        (VentAdvice? advice, GapBracket? bracket) = gap.Layout is { } layout
            ? (run.Problem.SizeVents(layout, gap.Model, gap.Solver, cancel), run.Problem.Bracket(layout, gap.Model, gap.Solver, cancel))
            : ((VentAdvice?)null, (GapBracket?)null);
        return new GapReview(staging, run, advice, bracket, [.. ChangeTrials.Of(run, gap, advice, cancel)]);
    }
}
