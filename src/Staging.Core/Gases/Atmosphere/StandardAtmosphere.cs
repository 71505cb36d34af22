using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// The US Standard Atmosphere 1976 up to 86 km geometric altitude, identical with ISO 2533 up to 32 km: a dry perfect
/// gas in hydrostatic balance, with temperature piecewise linear in geopotential altitude.
/// </summary>
/// <remarks>
/// Seven layers (US Standard Atmosphere 1976, Table 4) with 101325 Pa and 288.15 K at sea level; the lowest layer is
/// continued to -5 km as in the published tables. Above 80 km the temperature given is the molecular-scale temperature;
/// the kinetic one is at most 0.04 % lower there. Pressure, density and speed of sound are the published ones
/// throughout. Immutable, allocates nothing.
/// </remarks>
public sealed class StandardAtmosphere : IAtmosphere
{
    private const double Lowest_m = -5_000;
    private const double Highest_m = 86_000;

    private readonly HydrostaticProfile air = new(0, 101_325, 288.15, 0, 0);

    private StandardAtmosphere()
    {
    }

    /// <summary>The US Standard Atmosphere 1976.</summary>
    public static StandardAtmosphere Us1976 { get; } = new();

    /// <inheritdoc/>
    public double Floor_m => Lowest_m;

    /// <inheritdoc/>
    public double Ceiling_m => Highest_m;

    /// <summary>
    /// Geopotential altitude H = r0 z/(r0 + z) with r0 = 6356.766 km (US Standard Atmosphere 1976, equation 18).
    /// </summary>
    /// <param name="geometricAltitude">Geometric altitude z above mean sea level [m], -5 km to 86 km.</param>
    /// <returns>Geopotential altitude [m'].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Length GeopotentialAltitude(Length geometricAltitude) =>
        Length.FromMeters(
            HydrostaticProfile.Geopotential(Guard.In(geometricAltitude, Lowest_m, Highest_m, nameof(geometricAltitude)).Meters));

    /// <inheritdoc/>
    public AirSample At(double geometricAltitude_m) =>
        air.At(Guard.In(geometricAltitude_m, Lowest_m, Highest_m, "m", nameof(geometricAltitude_m)));
}
