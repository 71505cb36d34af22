namespace Staging.Core.Flight;

/// <summary>The kind of an event.</summary>
public enum FlightEventKind
{
    /// <summary>The thrust of the stage's motors ended.</summary>
    Burnout,

    /// <summary>The last web of a booster motor broke.</summary>
    BurnThrough,

    /// <summary>The electronics withheld ignition, or a gap failed to light the motor.</summary>
    IgnitionRefused,

    /// <summary>The lower part separated.</summary>
    Separation,

    /// <summary>A thrust history began.</summary>
    Ignition,

    /// <summary>Thrust overcame weight and friction.</summary>
    LiftOff,

    /// <summary>The end of the guide was passed.</summary>
    GuideExit,

    /// <summary>Greatest speed on the way up.</summary>
    MaximumSpeed,

    /// <summary>A delay ended and the ejection charge fired.</summary>
    Ejection,

    /// <summary>A recovery device began to act, or a body to tumble.</summary>
    DeviceOpens,

    /// <summary>Greatest height.</summary>
    Apogee,

    /// <summary>The ground.</summary>
    Landing,

    /// <summary>The atmosphere given with the site ended.</summary>
    LeftAtmosphere,
}
