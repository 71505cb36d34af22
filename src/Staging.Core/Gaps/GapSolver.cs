using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Solves gap problems with the displacement model: two zones, a front between them, and a stirred dead end.</summary>
public static class GapSolver
{
    /// <summary>Runs a gap from burn-through until the joint opens, the gap is spent or the horizon is reached.</summary>
    /// <param name="problem">The gap.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>The run. Stages pushed apart, or a grain that stays cold, are results, not exceptions.</returns>
    /// <exception cref="InvalidModelException"><see cref="GapProblem.Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapRun Solve(this GapProblem problem, SolverOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        InvalidModelException.ThrowOnError(problem.Check());
        return new GapMarch(problem, options ?? SolverOptions.Default).Run(cancellationToken);
    }
}
