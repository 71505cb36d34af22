namespace Staging.Core.Flight;

/// <summary>The event a <see cref="DeploymentTrigger"/> waits for.</summary>
internal enum DeploymentEvent
{
    /// <summary>Parting from the stage above.</summary>
    Separation,

    /// <summary>The ejection charge of the stage's own motor.</summary>
    MotorDelay,

    /// <summary>Apogee.</summary>
    Apogee,
}
