using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>
/// A pneumatic component described by its sonic conductance C and critical ratio b: choked q = C rho0 p1 sqrt(T0/T1),
/// subsonic the same times (1 - ((r - b)/(1 - b))^2)^m. ISO 6358-1:2013; an ellipse for m = 0.5 (F. E. Sanville 1971).
/// </summary>
/// <remarks>
/// C and b are measured with air. For another gas the choked flow is scaled as that of an ideal nozzle, with
/// C*(gamma)/C*(1.4) and the gas constant; b is left unchanged: an engineering judgement, good to a few per cent. The
/// reference atmosphere of the standard is 293.15 K, 100 kPa, 1.185 kg/m3 (65 % humidity; from memory, confirmed by a
/// worked exercise). Its moisture makes its gas constant 287.86 J/(kg K), so that <see cref="PerfectGas.DryAir"/>
/// passes 0.14 % more mass than the formula of the standard, which treats any air as that atmosphere. Smoothed within
/// <see cref="Orifice.BlendWidth"/> of equal pressures; the
/// standard itself leaves this to the user. Mass flux is per <see cref="ReferenceArea"/>: two holes of that area are
/// two components.
/// </remarks>
public sealed record SonicConductanceLaw : IDischargeLaw
{
    /// <summary>Density of the standard reference atmosphere [kg/m3]; ISO 6358-1:2013 (from memory).</summary>
    public const double ReferenceDensity_kg_per_m3 = 1.185;

    /// <summary>Temperature of the standard reference atmosphere [K]; ISO 6358-1:2013 (from memory).</summary>
    public const double ReferenceTemperature_K = 293.15;

    /// <summary>Pressure of the standard reference atmosphere [Pa]; ISO 6358-1:2013 (from memory).</summary>
    public const double ReferencePressure_Pa = 100e3;

    private static readonly double AirFactor = IsentropicFlow.Unchecked.CriticalFlowFactor(1.4);
    private static readonly double ReferenceScale = Math.Sqrt(ReferencePressure_Pa * ReferenceDensity_kg_per_m3);

    /// <summary>Sonic conductance C [m3/(s Pa)], 1e-13 to 1e-5; 1 dm3/(s bar) is 1e-8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double SonicConductance_m3_per_sPa { get; init => field = Guard.In(value, 1e-13, 1e-5, "m3/(s Pa)"); }

    /// <summary>Critical pressure ratio b [-], 0 to 0.7.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double CriticalRatio { get; init => field = Guard.In(value, 0, 0.7); }

    /// <summary>Subsonic index m [-], 0.4 to 1; 0.5 in most catalogues.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double SubsonicIndex { get; init => field = Guard.In(value, 0.4, 1); }

    /// <summary>Hole area that represents one such component [m2], 1e-9 to 0.01.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Area ReferenceArea { get; init => field = Guard.In(value, 1e-9, 0.01); }

    /// <summary>Where C, b and m come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <inheritdoc/>
    public ValidityRange Validity => new(0, 0, double.PositiveInfinity, Provenance);

    /// <summary>
    /// Conductance of an ideal nozzle for air: C = A C*(1.4) / (rho0 sqrt(R T0)), with R of the reference atmosphere.
    /// </summary>
    /// <param name="throatArea">Throat area [m2], 1e-9 to 0.01.</param>
    /// <returns>C [m3/(s Pa)].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static double OfIdealNozzle_m3_per_sPa(Area throatArea) =>
        Guard.In(throatArea, 1e-9, 0.01, nameof(throatArea)).SquareMeters * AirFactor / ReferenceScale;

    /// <inheritdoc/>
    double IDischargeLaw.CriticalPressureRatio(double heatCapacityRatio) => CriticalRatio;

    /// <inheritdoc/>
    public double MassFlux_kg_per_m2s(in OrificeConditions conditions) =>
        conditions.FluxScale * Scale(conditions.HeatCapacityRatio) * Ellipse(conditions.RelativeFall).Value;

    /// <inheritdoc/>
    public (double MassFlux_kg_per_m2s, double ByUpstreamPressure_s_per_m, double ByDownstreamPressure_s_per_m) SlopesAt(
        in OrificeConditions conditions)
    {
        PhiDerivative phi = Ellipse(conditions.RelativeFall);
        double scale = Scale(conditions.HeatCapacityRatio);
        return new PhiDerivative(scale * phi.Value, scale * phi.ByRatio).Flux(conditions);
    }

    // C rho0 sqrt(R0 T0) per reference area, with R0 T0 = p0/rho0.
    private double Scale(double gamma) => SonicConductance_m3_per_sPa / ReferenceArea.SquareMeters * ReferenceScale
        * (gamma == 1.4 ? 1 : IsentropicFlow.Unchecked.CriticalFlowFactor(gamma) / AirFactor);

    // With u = (r-b)/(1-b): (1 - u^2)^m = d^m e^m, e = (1 + u)/(1 - b), so that the blended power of d takes the steep
    // part.
    private PhiDerivative Ellipse(double d)
    {
        double b = CriticalRatio;
        double m = SubsonicIndex;
        double r = 1 - d;
        if (r <= b)
            return new PhiDerivative(1, 0);
        double e = (1 + (r - b) / (1 - b)) / (1 - b);
        double de = 1 / ((1 - b) * (1 - b));
        double em = m == 0.5 ? Math.Sqrt(e) : Math.Pow(e, m);
        PhiDerivative power = SmoothRoot.Power(d, m);
        return new PhiDerivative(power.Value * em, -power.ByRatio * em + power.Value * m * em / e * de);
    }
}
