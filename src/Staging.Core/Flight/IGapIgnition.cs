namespace Staging.Core.Flight;

/// <summary>
/// Decides whether burn-through gas lights the next stage, and when. Thread-safe, and a pure function of the state.
/// Plans compare by value, so an implementation should be a record.
/// </summary>
public interface IGapIgnition
{
    /// <summary>
    /// Called at the burn-through of the motor below, and again in each failure case that comes to it in another state.
    /// </summary>
    /// <param name="state">Air, flight and masses at that moment.</param>
    /// <param name="cancellationToken">Stops the answer, as it stops the flight.</param>
    /// <returns>Lit or not, with the times that count from burn-through.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    GapIgnitionResult Ignite(BurnThroughState state, CancellationToken cancellationToken = default);
}
