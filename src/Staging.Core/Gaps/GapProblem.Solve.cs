using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <content>Solves the problem with a model.</content>
public sealed partial record GapProblem
{
    private static readonly GapModel Usual = new GapModel.TwoZone();

    /// <summary>
    /// Runs a gap from burn-through until the joint has opened (and <see cref="AfterOpening"/> has passed), the gap is
    /// spent or the horizon is reached.
    /// </summary>
    /// <param name="model">How the gas is modelled; null for <see cref="GapModel.TwoZone"/>.</param>
    /// <param name="options">How to integrate; null for <see cref="SolverOptions.ForGaps"/>. The one-dimensional model
    /// takes the number of steps allowed from it, nothing else.</param>
    /// <param name="progress">Gets how far the run has come, in order, on the calling thread; null for no
    /// report.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>The run. Stages pushed apart, or a grain that stays cold, are results, not exceptions.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public GapRun Solve(
        GapModel? model = null,
        SolverOptions? options = null,
        IProgress<SolveProgress>? progress = null,
        CancellationToken cancellationToken = default) =>
        Run(model, options ?? SolverOptions.ForGaps, untilLit: false, progress, cancellationToken);

    /// <summary>
    /// The same until the grain is lit, for a question that this answers: what comes later in a whole run is missing.
    /// </summary>
    internal GapRun SolveUntilLit(GapModel? model, SolverOptions options, CancellationToken cancellationToken) =>
        Run(model, options, untilLit: true, null, cancellationToken);

    private GapRun Run(GapModel? model, SolverOptions options, bool untilLit, IProgress<SolveProgress>? progress, CancellationToken cancel)
    {
        InvalidModelException.ThrowOnError(Check());
        return (model ?? Usual).Match(Lumped, Lumped, Resolved);

        GapRun Resolved(GapModel.OneDimensional flow) => new OneDimensionalSolver(this, flow, options, progress, untilLit).Run(cancel);
        GapRun Lumped(GapModel lumped) => new LumpedSolver(this, lumped, options, progress, untilLit).Run(cancel);
    }
}
