using Staging.Core.Gaps.OneDimensional;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Solves gap problems with the model asked for.</summary>
public static class GapSolver
{
    private static readonly GapModel Usual = new GapModel.TwoZone();

    /// <summary>
    /// Runs a gap from burn-through until the joint opens, the gap is spent or the horizon is reached.
    /// </summary>
    /// <param name="problem">The gap.</param>
    /// <param name="model">How the gas is modelled; null for <see cref="GapModel.TwoZone"/>.</param>
    /// <param name="options">How to integrate; null for the defaults. The resolved model takes the number of steps
    /// allowed from it, nothing else.</param>
    /// <param name="progress">Told in order, on the calling thread, how far the run has come; null for nobody.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>The run. Stages pushed apart, or a grain that stays cold, are results, not exceptions.</returns>
    /// <exception cref="InvalidModelException"><see cref="GapProblem.Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapRun Solve(
        this GapProblem problem,
        GapModel? model = null,
        SolverOptions? options = null,
        IProgress<SolveProgress>? progress = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        GapModel how = model ?? Usual;
        InvalidModelException.ThrowOnError(problem.Check());
        SolverOptions steps = options ?? SolverOptions.Default;
        return how.Match(Lumped, Lumped, resolved => new OneDimensionalSolver(problem, resolved, steps, progress).Run(cancellationToken));

        GapRun Lumped(GapModel lumped) => new LumpedSolver(problem, lumped, steps, progress).Run(cancellationToken);
    }
}
