namespace Staging.Core.Solving;

/// <summary>Why an integration stopped early.</summary>
public enum SolverFailureKind
{
    /// <summary>The step fell below the spacing of representable times.</summary>
    StepTooSmall,

    /// <summary>The allowed number of steps was used up.</summary>
    TooManySteps,

    /// <summary>
    /// A state or a derivative became infinite or not a number, or every step led to a state that cannot be.
    /// </summary>
    NonFiniteState,
}
