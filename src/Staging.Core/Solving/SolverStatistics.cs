namespace Staging.Core.Solving;

/// <summary>Work done by a run, independent of the machine: for tests and comparisons.</summary>
public sealed class SolverStatistics
{
    internal SolverStatistics(in SolverWork work) => Work = work;

    /// <summary>Steps that met the tolerance.</summary>
    public int AcceptedSteps => Work.AcceptedSteps;

    /// <summary>Steps that were repeated with a smaller size.</summary>
    public int RejectedSteps => Work.RejectedSteps;

    /// <summary>Evaluations of the right-hand side.</summary>
    public int DerivativeCalls => Work.DerivativeCalls;

    /// <summary>Evaluations of the event functions.</summary>
    public int EventCalls => Work.EventCalls;

    /// <summary>
    /// Jacobians evaluated by an implicit method, analytically or by differences (whose calls count as derivative calls
    /// too).
    /// </summary>
    public int JacobianCalls => Work.JacobianCalls;

    /// <summary>Matrices factorised by an implicit method.</summary>
    public int Factorisations => Work.Factorisations;

    /// <summary>The counts together.</summary>
    internal SolverWork Work { get; }
}
