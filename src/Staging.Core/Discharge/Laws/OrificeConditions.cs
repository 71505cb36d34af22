namespace Staging.Core.Discharge;

/// <summary>The input of a discharge law, in SI units. Upstream is the side of the higher pressure.</summary>
/// <param name="UpstreamPressure_Pa">Stagnation pressure upstream [Pa].</param>
/// <param name="UpstreamTemperature_K">Stagnation temperature upstream [K].</param>
/// <param name="DownstreamPressure_Pa">Static pressure downstream [Pa], at most the upstream pressure.</param>
/// <param name="GasConstant_J_per_kgK">Specific gas constant of the upstream gas [J/(kg K)].</param>
/// <param name="HeatCapacityRatio">Ratio of heat capacities of the upstream gas [-], 1.01 to 5/3 as of any
/// <see cref="Gases.PerfectGas"/>.</param>
/// <param name="HoleDiameter_m">Diameter of one hole [m].</param>
/// <param name="WallThickness_m">Thickness of the wall, the length of the hole [m].</param>
public readonly record struct OrificeConditions(
    double UpstreamPressure_Pa,
    double UpstreamTemperature_K,
    double DownstreamPressure_Pa,
    double GasConstant_J_per_kgK,
    double HeatCapacityRatio,
    double HoleDiameter_m,
    double WallThickness_m)
{
    /// <summary>Downstream over upstream pressure, r [-].</summary>
    public double PressureRatio => DownstreamPressure_Pa / UpstreamPressure_Pa;

    /// <summary>
    /// Pressure fall over upstream pressure, 1 - r [-], without the cancellation of 1 - r near equal pressures.
    /// </summary>
    public double RelativeFall => (UpstreamPressure_Pa - DownstreamPressure_Pa) / UpstreamPressure_Pa;

    /// <summary>Wall thickness over hole diameter [-].</summary>
    public double ThicknessToDiameter => WallThickness_m / HoleDiameter_m;

    /// <summary>p0 / sqrt(R T0) [kg/(m2 s)], the scale of every mass flux.</summary>
    internal double FluxScale => UpstreamPressure_Pa / Math.Sqrt(GasConstant_J_per_kgK * UpstreamTemperature_K);
}
