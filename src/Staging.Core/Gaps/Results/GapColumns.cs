namespace Staging.Core.Gaps;

/// <summary>The course of a gap run as columns of equal length, in SI units, for plots and notebooks.</summary>
public sealed record GapColumns
{
    /// <summary>Time since burn-through [s].</summary>
    public required ReadOnlyMemory<double> Time_s { get; init; }

    /// <summary>Absolute gap pressure [Pa].</summary>
    public required ReadOnlyMemory<double> GapPressure_Pa { get; init; }

    /// <summary>
    /// Absolute chamber pressure [Pa]: the highest in a cluster, that of the gap where the source has no chamber.
    /// </summary>
    public required ReadOnlyMemory<double> ChamberPressure_Pa { get; init; }

    /// <summary>Station of the front [m]; for a stirred gap see <see cref="GapModel.WellStirred"/>.</summary>
    public required ReadOnlyMemory<double> Front_m { get; init; }

    /// <summary>Temperature of the products behind the front, or of the mixture in a stirred gap [K].</summary>
    public required ReadOnlyMemory<double> HotTemperature_K { get; init; }

    /// <summary>Temperature of the gas at the upper nozzle [K].</summary>
    public required ReadOnlyMemory<double> NozzleTemperature_K { get; init; }

    /// <summary>Mass fraction of products at the upper nozzle [-].</summary>
    public required ReadOnlyMemory<double> ProductsAtNozzle { get; init; }

    /// <summary>Heat flux into the grain from the gas stream [W/m2].</summary>
    public required ReadOnlyMemory<double> Convection_W_per_m2 { get; init; }

    /// <summary>Heat flux into the grain by radiation [W/m2].</summary>
    public required ReadOnlyMemory<double> Radiation_W_per_m2 { get; init; }

    /// <summary>Heat flux into the grain from impinging particles [W/m2].</summary>
    public required ReadOnlyMemory<double> Particles_W_per_m2 { get; init; }

    /// <summary>Temperature of the grain surface [K].</summary>
    public required ReadOnlyMemory<double> GrainSurface_K { get; init; }

    /// <summary>Travel of the joint [m].</summary>
    public required ReadOnlyMemory<double> JointTravel_m { get; init; }
}
