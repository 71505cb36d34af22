using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>Solves gap problems with the model asked for.</summary>
public static class GapSolver
{
    private static readonly GapModel Usual = new GapModel.Displacement();

    /// <summary>Runs a gap from burn-through until the joint opens, the gap is spent or the horizon is reached.</summary>
    /// <param name="problem">The gap.</param>
    /// <param name="model">How the gas is modelled; null for <see cref="GapModel.Displacement"/>.</param>
    /// <param name="options">How to integrate; null for the defaults.</param>
    /// <param name="cancellationToken">Stops the run.</param>
    /// <returns>The run. Stages pushed apart, or a grain that stays cold, are results, not exceptions.</returns>
    /// <exception cref="InvalidModelException"><see cref="GapProblem.Check"/> reports errors.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static GapRun Solve(
        this GapProblem problem, GapModel? model = null, SolverOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        InvalidModelException.ThrowOnError(problem.Check());
        return new GapMarch(problem, model ?? Usual, options ?? SolverOptions.Default).Run(cancellationToken);
    }
}
