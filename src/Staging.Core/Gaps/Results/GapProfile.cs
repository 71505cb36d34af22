using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// The gas along the tube at one moment, as columns of equal length in SI units, one row a cell from the booster's end.
/// </summary>
/// <remarks>Immutable; may be read from any thread. See <see cref="GapRun.Profiles"/>.</remarks>
public sealed class GapProfile
{
    internal GapProfile(double time) => Time = Duration.FromSeconds(time);

    /// <summary>Time since burn-through.</summary>
    public Duration Time { get; }

    /// <summary>
    /// Station of the middle of each cell [m], from the booster motor's forward end as it was before the joint slid.
    /// </summary>
    public ReadOnlyMemory<double> Station_m { get; internal init; }

    /// <summary>Absolute pressure [Pa].</summary>
    public ReadOnlyMemory<double> Pressure_Pa { get; internal init; }

    /// <summary>Velocity towards the upper motor [m/s].</summary>
    public ReadOnlyMemory<double> Velocity_m_per_s { get; internal init; }

    /// <summary>Temperature [K].</summary>
    public ReadOnlyMemory<double> Temperature_K { get; internal init; }

    /// <summary>Density [kg/m3].</summary>
    public ReadOnlyMemory<double> Density_kg_per_m3 { get; internal init; }

    /// <summary>Mass fraction of products [-], 0 to 1.</summary>
    public ReadOnlyMemory<double> Products { get; internal init; }

    /// <summary>When, and over how many cells.</summary>
    /// <returns>One line.</returns>
    public override string ToString() =>
        Invariant.Text($"The gas in {Station_m.Length} cells along the tube at {Time.Milliseconds:F2} ms.");
}
