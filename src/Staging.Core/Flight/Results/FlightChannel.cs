namespace Staging.Core.Flight;

/// <summary>A column of a recorded flight, in SI units; <see cref="FlightColumns.UnitOf"/> gives the unit.</summary>
public enum FlightChannel
{
    /// <summary>Height above the site.</summary>
    Height,

    /// <summary>
    /// Velocity: along the launch direction on the way up, vertical on the way down; upwards positive.
    /// </summary>
    Velocity,

    /// <summary>Rate of change of the velocity.</summary>
    Acceleration,

    /// <summary>Mass.</summary>
    Mass,

    /// <summary>Thrust.</summary>
    Thrust,

    /// <summary>Drag, at least 0.</summary>
    Drag,

    /// <summary>Mach number.</summary>
    MachNumber,

    /// <summary>Dynamic pressure rho v^2/2.</summary>
    DynamicPressure,
}
