using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// The gas along the tube at one moment, as columns of equal length in SI units, one row a cell from the booster's end.
/// </summary>
public sealed record GapProfile
{
    /// <summary>Time since burn-through.</summary>
    public required Duration Time { get; init; }

    /// <summary>
    /// Station of the middle of each cell [m], from the booster motor's forward end as it was before the joint slid.
    /// </summary>
    public required ReadOnlyMemory<double> Station_m { get; init; }

    /// <summary>Absolute pressure [Pa].</summary>
    public required ReadOnlyMemory<double> Pressure_Pa { get; init; }

    /// <summary>Velocity towards the upper motor [m/s].</summary>
    public required ReadOnlyMemory<double> Velocity_m_per_s { get; init; }

    /// <summary>Temperature [K].</summary>
    public required ReadOnlyMemory<double> Temperature_K { get; init; }

    /// <summary>Density [kg/m3].</summary>
    public required ReadOnlyMemory<double> Density_kg_per_m3 { get; init; }

    /// <summary>Mass fraction of products [-], 0 to 1.</summary>
    public required ReadOnlyMemory<double> Products { get; init; }
}
