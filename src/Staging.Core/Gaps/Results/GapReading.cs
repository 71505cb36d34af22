namespace Staging.Core.Gaps;

/// <summary>The state of a gap at one moment as plain SI numbers, as every model can tell it.</summary>
internal readonly record struct GapReading
{
    /// <summary>Absolute pressure in the gap [Pa].</summary>
    public required double GapPressure { get; init; }

    public required double ChamberPressure { get; init; }

    /// <summary>Absolute pressures in the jackets [Pa].</summary>
    public required double[] JacketPressures { get; init; }

    /// <summary>Station of the front [m].</summary>
    public required double Front { get; init; }

    public required double HotTemperature { get; init; }

    public required double NozzleTemperature { get; init; }

    /// <summary>Mass fraction of products at the nozzle [-].</summary>
    public required double ProductsAtNozzle { get; init; }

    public required double GrainSurface { get; init; }

    public required double JointTravel { get; init; }

    /// <summary>Heat fluxes into the grain [W/m2].</summary>
    public required double Convection { get; init; }

    public required double Radiation { get; init; }

    public required double Particles { get; init; }
}
