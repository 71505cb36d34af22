using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The state of a gap at one moment.</summary>
public sealed record GapSnapshot
{
    internal GapSnapshot()
    {
    }

    /// <summary>Time since burn-through.</summary>
    public required Duration Time { get; init; }

    /// <summary>Absolute pressure in the gap.</summary>
    public required Pressure GapPressure { get; init; }

    /// <summary>
    /// Absolute pressure in the booster's chamber: the highest in a cluster, that of the gap where the source has no
    /// chamber.
    /// </summary>
    public required Pressure ChamberPressure { get; init; }

    /// <summary>Absolute pressures in the jackets, in the order of <see cref="GapDesign.Jackets"/>.</summary>
    public ImmutableArray<Pressure> JacketPressures { get; init; } = [];

    /// <summary>
    /// Distance of the front from the booster motor's forward end; for a stirred gap see
    /// <see cref="GapModel.WellStirred"/>.
    /// </summary>
    public required Length Front { get; init; }

    /// <summary>Temperature of the products behind the front; of the mixture in a stirred gap.</summary>
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
