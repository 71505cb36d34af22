namespace Staging.Core.Solving;

/// <summary>Counts of the work of a run, added to as it goes: <see cref="SolverStatistics"/> in the making.</summary>
/// <param name="AcceptedSteps">Steps that met the tolerance.</param>
/// <param name="RejectedSteps">Steps that were repeated with a smaller size.</param>
/// <param name="DerivativeCalls">Evaluations of the right-hand side.</param>
/// <param name="EventCalls">Evaluations of the event functions.</param>
internal readonly record struct SolverWork(int AcceptedSteps, int RejectedSteps, int DerivativeCalls, int EventCalls)
{
    /// <summary>Jacobians evaluated by an implicit method.</summary>
    public int JacobianCalls { get; init; }

    /// <summary>Matrices factorised by an implicit method.</summary>
    public int Factorisations { get; init; }

    /// <summary>Steps tried, those that were repeated included.</summary>
    public int Steps => AcceptedSteps + RejectedSteps;

    /// <summary>The work of two runs together, count by count.</summary>
    public static SolverWork operator +(SolverWork a, SolverWork b) => new(
        a.AcceptedSteps + b.AcceptedSteps,
        a.RejectedSteps + b.RejectedSteps,
        a.DerivativeCalls + b.DerivativeCalls,
        a.EventCalls + b.EventCalls)
    {
        JacobianCalls = a.JacobianCalls + b.JacobianCalls,
        Factorisations = a.Factorisations + b.Factorisations,
    };
}
