using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The moment at which a recovery device is deployed.</summary>
public sealed record DeploymentTrigger
{
    private DeploymentTrigger(DeploymentEvent on, Duration lag) => (On, Lag) = (on, lag);

    /// <summary>
    /// The ejection charge of the stage's own motor, after its delay. A motor that never burnt ejects nothing.
    /// </summary>
    public static DeploymentTrigger ByMotorDelay { get; } = new(DeploymentEvent.MotorDelay, Duration.Zero);

    /// <summary>The event that starts it.</summary>
    internal DeploymentEvent On { get; }

    /// <summary>Time from the event until the device acts [s]; zero where the motor's delay decides.</summary>
    internal Duration Lag { get; }

    /// <summary>
    /// Parting from the stage above releases it: a booster that tumbles, or a motor tube that slides out and
    /// releases a streamer.
    /// </summary>
    /// <param name="lag">Time from separation until the device acts [s], 0 to 100 s.</param>
    /// <returns>The trigger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static DeploymentTrigger AtSeparation(Duration lag) => new(DeploymentEvent.Separation, Guard.In(lag, 0, 100, nameof(lag)));

    /// <summary>Electronics that sense apogee; they act whether or not a motor lit.</summary>
    /// <param name="lag">Time from apogee until the device acts [s], 0 to 100 s.</param>
    /// <returns>The trigger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static DeploymentTrigger AtApogee(Duration lag) => new(DeploymentEvent.Apogee, Guard.In(lag, 0, 100, nameof(lag)));

    /// <summary>Chooses by case; each lag is the time from the event until the device acts [s].</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="atSeparation">The answer where separation releases it, from its lag.</param>
    /// <param name="byMotorDelay">The answer where the motor's ejection charge pushes it out.</param>
    /// <param name="atApogee">The answer where electronics release it at apogee, from their lag.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<Duration, T> atSeparation, Func<T> byMotorDelay, Func<Duration, T> atApogee) => On switch
    {
        DeploymentEvent.Separation => atSeparation(Lag),
        DeploymentEvent.MotorDelay => byMotorDelay(),
        _ => atApogee(Lag),
    };

    /// <summary>The trigger in words.</summary>
    /// <returns>Event and lag.</returns>
    public override string ToString() => Match(
        lag => Invariant.Text($"{lag.Seconds:G4} s after separation"),
        () => "by the motor's delay",
        lag => Invariant.Text($"{lag.Seconds:G4} s after apogee"));
}
