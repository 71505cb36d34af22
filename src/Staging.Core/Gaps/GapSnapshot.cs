using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The state of a gap at one moment.</summary>
public sealed record GapSnapshot
{
    /// <summary>Time since burn-through.</summary>
    public required Duration Time { get; init; }

    /// <summary>Absolute pressure in the gap.</summary>
    public required Pressure GapPressure { get; init; }

    /// <summary>Absolute pressure in the booster's chamber.</summary>
    public required Pressure ChamberPressure { get; init; }

    /// <summary>Station of the front.</summary>
    public required Length Front { get; init; }

    /// <summary>Temperature of the products behind the front.</summary>
    public required Temperature HotTemperature { get; init; }

    /// <summary>Temperature of the gas at the upper nozzle.</summary>
    public required Temperature NozzleTemperature { get; init; }

    /// <summary>Mass fraction of products at the upper nozzle [-], 0 to 1.</summary>
    public required double ProductsAtNozzle { get; init; }

    /// <summary>Temperature of the grain surface.</summary>
    public required Temperature GrainSurface { get; init; }

    /// <summary>Travel of the joint.</summary>
    public required Length JointTravel { get; init; }

    /// <summary>Heat flux into the grain from the gas stream.</summary>
    public required HeatFlux Convection { get; init; }

    /// <summary>Heat flux into the grain by radiation.</summary>
    public required HeatFlux Radiation { get; init; }

    /// <summary>Heat flux into the grain from impinging particles.</summary>
    public required HeatFlux Particles { get; init; }
}
