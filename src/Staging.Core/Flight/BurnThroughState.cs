using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// Flight and air at the moment a booster burns through: the input that a gap model needs from the flight.
/// </summary>
public sealed record BurnThroughState
{
    /// <summary>Name of the stage that burns through.</summary>
    public required string LowerStage { get; init; }

    /// <summary>Name of the stage to be lit.</summary>
    public required string UpperStage { get; init; }

    /// <summary>Time from ignition of the lowest stage [s].</summary>
    public required Duration Time { get; init; }

    /// <summary>Height above the site [m].</summary>
    public required Length Height { get; init; }

    /// <summary>Speed along the flight direction, upwards positive [m/s].</summary>
    public required Speed Speed { get; init; }

    /// <summary>Mach number [-].</summary>
    public required double MachNumber { get; init; }

    /// <summary>Static pressure of the air [Pa].</summary>
    public required Pressure AirPressure { get; init; }

    /// <summary>Static temperature of the air [K].</summary>
    public required Temperature AirTemperature { get; init; }

    /// <summary>Density of the air [kg/m3].</summary>
    public required Density AirDensity { get; init; }

    /// <summary>Mass of everything ahead of the joint [kg].</summary>
    public required Mass MassAhead { get; init; }

    /// <summary>Mass of the stage behind the joint, as burnt so far [kg].</summary>
    public required Mass MassBehind { get; init; }

    /// <summary>
    /// Drag on the part ahead of the joint [N]: taken as the drag of the upper stage flying alone, not more than that
    /// of the stack. Flying alone it has its own base drag, so this is an upper bound.
    /// </summary>
    public required Force DragAhead { get; init; }

    /// <summary>Drag on the part behind the joint [N]: the rest of the drag of the stack; a lower bound.</summary>
    public required Force DragBehind { get; init; }

    /// <summary>
    /// Remaining thrust of the booster [N]; zero where burn-through is the end of its thrust history.
    /// </summary>
    public required Force ThrustBehind { get; init; }
}
