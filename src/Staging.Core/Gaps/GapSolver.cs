using Staging.Core.Gaps.Resolved;
using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Solves gap problems.</summary>
public static class GapSolver
{
    /// <summary>Runs a gap from burn-through until the joint opens, the gap is spent or the horizon is reached.</summary>
    /// <param name="problem">The gap.</param>
    /// <param name="model">How the gas is described; null for <see cref="GapModel.Displacement"/>.</param>
    /// <param name="options">How to integrate; null for the defaults. The resolved model uses the number of steps allowed, nothing else.</param>
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
        InvalidModelException.ThrowOnError(problem.Check());
        SolverOptions how = options ?? SolverOptions.Default;
        return (model ?? new GapModel.Displacement()).Match(
            displacement => new GapMarch(problem, displacement, how, progress).Run(cancellationToken),
            resolved => new ResolvedMarch(problem, resolved, how, progress).Run(cancellationToken));
    }
}
