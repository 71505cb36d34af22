namespace Staging.Core.Solving;

/// <summary>Receives every accepted step, in order, as a polynomial.</summary>
internal interface IStepObserver
{
    /// <summary>Whether it has seen what it waited for, which ends the integration.</summary>
    bool IsDone => false;

    /// <summary>Takes the step from <paramref name="start"/> over <paramref name="length"/> [s].</summary>
    /// <param name="start">Start time [s].</param>
    /// <param name="length">Length of the part that counts [s]: shorter than the step where an event cut it.</param>
    /// <param name="step">The dense output of the step.</param>
    void Accept(double start, double length, in DenseStep step);
}
