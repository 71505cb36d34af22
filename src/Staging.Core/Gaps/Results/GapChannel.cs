namespace Staging.Core.Gaps;

/// <summary>
/// A number that a gap run records over time. <see cref="GapColumns"/> gives it as a column in SI units,
/// <see cref="GapSnapshot"/> as a quantity.
/// </summary>
public enum GapChannel
{
    /// <summary>Absolute gap pressure [Pa].</summary>
    GapPressure,

    /// <summary>
    /// Absolute chamber pressure [Pa]: the highest in a cluster, that of the gap where the source has no chamber.
    /// </summary>
    ChamberPressure,

    /// <summary>
    /// Distance of the front from the booster motor's forward end [m]; for a stirred gap see
    /// <see cref="GapModel.WellStirred"/>.
    /// </summary>
    Front,

    /// <summary>Temperature of the products behind the front, or of the mixture in a stirred gap [K].</summary>
    HotTemperature,

    /// <summary>Temperature of the gas at the upper nozzle [K].</summary>
    NozzleTemperature,

    /// <summary>Mass fraction of products at the upper nozzle [-], 0 to 1.</summary>
    ProductsAtNozzle,

    /// <summary>Temperature of the grain surface [K].</summary>
    GrainSurface,

    /// <summary>Travel of the joint [m].</summary>
    JointTravel,

    /// <summary>Heat flux into the grain from the gas stream [W/m2].</summary>
    Convection,

    /// <summary>Heat flux into the grain by radiation [W/m2].</summary>
    Radiation,

    /// <summary>Heat flux into the grain from impinging particles [W/m2].</summary>
    Particles,
}
