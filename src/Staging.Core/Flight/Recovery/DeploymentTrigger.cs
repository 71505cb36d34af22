using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>When a recovery device comes out.</summary>
public abstract record DeploymentTrigger
{
    private protected DeploymentTrigger()
    {
    }

    /// <summary>Chooses by case.</summary>
    /// <typeparam name="T">Type of the answer.</typeparam>
    /// <param name="atSeparation">The answer where separation releases it.</param>
    /// <param name="byMotorDelay">The answer where the motor's ejection charge pushes it out.</param>
    /// <param name="atApogee">The answer where electronics release it at apogee.</param>
    /// <returns>The answer of the case at hand.</returns>
    public T Match<T>(Func<AtSeparation, T> atSeparation, Func<ByMotorDelay, T> byMotorDelay, Func<AtApogee, T> atApogee) => this switch
    {
        AtSeparation x => atSeparation(x),
        ByMotorDelay x => byMotorDelay(x),
        _ => atApogee((AtApogee)this),
    };

    /// <summary>
    /// Parting from the stage above releases it: a booster that tumbles, or a motor tube that slides out and lets a
    /// streamer go.
    /// </summary>
    public sealed record AtSeparation : DeploymentTrigger
    {
        /// <summary>Time from separation until the device acts [s], 0 to 100 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Lag { get; init => field = Guard.In(value, 0, 100); }
    }

    /// <summary>
    /// The ejection charge of the stage's own motor, after its delay. A motor that never burnt ejects nothing.
    /// </summary>
    public sealed record ByMotorDelay : DeploymentTrigger;

    /// <summary>Electronics that sense apogee; they act whether or not a motor lit.</summary>
    public sealed record AtApogee : DeploymentTrigger
    {
        /// <summary>Time from apogee until the device acts [s], 0 to 100 s.</summary>
        /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
        public required Duration Lag { get; init => field = Guard.In(value, 0, 100); }
    }
}
