namespace Staging.Core.Solving;

/// <summary>Work done by a run, independent of the machine: for tests and comparisons.</summary>
/// <param name="AcceptedSteps">Steps that met the tolerance.</param>
/// <param name="RejectedSteps">Steps that were repeated with a smaller size.</param>
/// <param name="DerivativeCalls">Evaluations of the right-hand side.</param>
/// <param name="EventCalls">Evaluations of the event functions.</param>
public readonly record struct SolverStatistics(int AcceptedSteps, int RejectedSteps, int DerivativeCalls, int EventCalls)
{
    /// <summary>
    /// Jacobians evaluated by an implicit method, analytically or by differences (whose calls count as derivative calls
    /// too).
    /// </summary>
    public int JacobianCalls { get; init; }

    /// <summary>Matrices factorised by an implicit method.</summary>
    public int Factorisations { get; init; }

    /// <summary>The work of two runs together.</summary>
    /// <param name="a">One run.</param>
    /// <param name="b">The other run.</param>
    /// <returns>The sums, count by count.</returns>
    public static SolverStatistics operator +(SolverStatistics a, SolverStatistics b) => Add(a, b);

    /// <summary>The work of two runs together.</summary>
    /// <param name="left">One run.</param>
    /// <param name="right">The other run.</param>
    /// <returns>The sums, count by count.</returns>
    public static SolverStatistics Add(SolverStatistics left, SolverStatistics right) => new(
        left.AcceptedSteps + right.AcceptedSteps,
        left.RejectedSteps + right.RejectedSteps,
        left.DerivativeCalls + right.DerivativeCalls,
        left.EventCalls + right.EventCalls)
    {
        JacobianCalls = left.JacobianCalls + right.JacobianCalls,
        Factorisations = left.Factorisations + right.Factorisations,
    };
}
