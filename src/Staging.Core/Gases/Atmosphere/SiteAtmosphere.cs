using System.Diagnostics.CodeAnalysis;

namespace Staging.Core.Gases;

/// <summary>
/// The air above a site whose weather is known at the ground: the standard temperature profile shifted by one offset,
/// in hydrostatic balance from the pressure at the ground, with the lighter moist air counted in.
/// </summary>
/// <remarks>
/// <para>
/// Temperature: that of the US Standard Atmosphere 1976 plus T_ground - T_standard(elevation), at all heights.
/// Judgement: it is the convention of performance charts ("standard plus ten degrees"); a ground inversion or a hot
/// surface layer is not in it.
/// </para>
/// <para>
/// Vapour: mole fraction x_v = x_ground (T/T_ground)^m up to 11 km geopotential, constant above, with m = d(ln
/// p_sv)/d(ln T) - g0/(R L) so that the relative humidity at the ground is kept as far as the first order in height.
/// Ideal mixture of air and vapour: rho = p/(R_air T) (1 - x_v (1 - Mv/Ma)); it is 0.04 % lighter than the full
/// equation CIPM-2007 (A. Picard et al., Metrologia 45 (2008) 149-155).
/// </para>
/// <para>With standard dry conditions at the ground this is <see cref="StandardAtmosphere.Us1976"/>. Immutable,
/// allocates nothing per call;
/// two above the same weather are equal.</para>
/// </remarks>
public sealed class SiteAtmosphere : IAtmosphere, IEquatable<SiteAtmosphere>
{
    /// <summary>How far below the site the profile is continued [m], for landings downhill. Judgement.</summary>
    private const double BelowSite_m = 1000;

    private readonly HydrostaticProfile air;

    /// <summary>The air above a site.</summary>
    /// <param name="conditions">The weather at the ground.</param>
    /// <exception cref="ArgumentNullException">No conditions.</exception>
    public SiteAtmosphere(SiteConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        Conditions = conditions;
        double T = conditions.Temperature.Kelvins;
        double tropospherePower = HydrostaticProfile.StandardGravity
            / (HydrostaticProfile.AirGasConstant * -AtmosphereLayer.Us1976[0].Gradient_K_per_m);
        air = new HydrostaticProfile(
            HydrostaticProfile.Geopotential(conditions.Elevation.Meters),
            conditions.Pressure.Pascals,
            T,
            MoistAir.VapourMoleFraction(conditions.Pressure, conditions.Temperature, conditions.RelativeHumidity),
            MoistAir.SaturationExponent(T) - tropospherePower);
    }

    /// <summary>The weather at the ground.</summary>
    public SiteConditions Conditions { get; }

    /// <summary>Lowest geometric altitude that may be asked for [m]: 1000 m below the site.</summary>
    public double Floor_m => Conditions.Elevation.Meters - BelowSite_m;

    /// <inheritdoc/>
    public double Ceiling_m => StandardAtmosphere.Us1976.Ceiling_m;

    /// <inheritdoc/>
    public AirSample At(double geometricAltitude_m) =>
        air.At(Guard.In(geometricAltitude_m, Floor_m, Ceiling_m, "m", nameof(geometricAltitude_m)));

    /// <inheritdoc/>
    public bool Equals([NotNullWhen(true)] SiteAtmosphere? other) => other is not null && Conditions == other.Conditions;

    /// <inheritdoc/>
    public override bool Equals([NotNullWhen(true)] object? obj) => Equals(obj as SiteAtmosphere);

    /// <inheritdoc/>
    public override int GetHashCode() => Conditions.GetHashCode();
}
