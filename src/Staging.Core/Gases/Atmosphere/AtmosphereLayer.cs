namespace Staging.Core.Gases;

/// <summary>
/// One layer of a standard temperature profile: temperature linear in geopotential altitude above its base.
/// </summary>
/// <param name="Base_m">Geopotential altitude of the base H_b [m'].</param>
/// <param name="BaseTemperature_K">Molecular-scale temperature at the base T_Mb [K].</param>
/// <param name="Gradient_K_per_m">Temperature gradient L_Mb [K/m'].</param>
internal readonly record struct AtmosphereLayer(double Base_m, double BaseTemperature_K, double Gradient_K_per_m)
{
    /// <summary>
    /// US Standard Atmosphere 1976, Table 4: the seven layers from the ground to 84.852 km' (86 km geometric).
    /// </summary>
    public static ReadOnlySpan<AtmosphereLayer> Us1976 => Table;

    private static readonly AtmosphereLayer[] Table =
    [
        new(0, 288.15, -0.0065),
        new(11_000, 216.65, 0),
        new(20_000, 216.65, 0.001),
        new(32_000, 228.65, 0.0028),
        new(47_000, 270.65, 0),
        new(51_000, 270.65, -0.0028),
        new(71_000, 214.65, -0.002),
    ];
}
