namespace Staging.Core.Solving;

/// <summary>How the integration of one phase ended.</summary>
internal enum PhaseEnd
{
    /// <summary>The stop time was reached exactly.</summary>
    StopTime,

    /// <summary>An event that ends the phase fired; time and state are those just past it.</summary>
    Event,

    /// <summary>The observer has seen what it waited for; time and state are those of the end of that step.</summary>
    Done,

    /// <summary>
    /// Stability binds the steps, not accuracy, see <see cref="Integrator{TMethod}.EndsAtEdge"/>; time and state are
    /// those of the end of the last step.
    /// </summary>
    AtEdge,

    /// <summary>The integration failed; <see cref="Integrator{TMethod}.Failure"/> says why.</summary>
    Failed,
}
