namespace Staging.Core.Discharge;

/// <summary>The input of a discharge law, in SI units. Upstream is the side of the higher pressure.</summary>
/// <param name="upstreamPressure_Pa">Stagnation pressure upstream [Pa].</param>
/// <param name="upstreamTemperature_K">Stagnation temperature upstream [K].</param>
/// <param name="downstreamPressure_Pa">Static pressure downstream [Pa], at most the upstream pressure.</param>
/// <param name="gasConstant_J_per_kgK">Specific gas constant of the upstream gas [J/(kg K)].</param>
/// <param name="heatCapacityRatio">Ratio of heat capacities of the upstream gas [-], 1.01 to 5/3 as of any
/// <see cref="Gases.PerfectGas"/>.</param>
/// <param name="holeDiameter_m">Diameter of one hole [m].</param>
/// <param name="wallThickness_m">Thickness of the wall, the length of the hole [m].</param>
public readonly struct OrificeConditions(
    double upstreamPressure_Pa,
    double upstreamTemperature_K,
    double downstreamPressure_Pa,
    double gasConstant_J_per_kgK,
    double heatCapacityRatio,
    double holeDiameter_m,
    double wallThickness_m)
{
    /// <summary>Stagnation pressure upstream [Pa].</summary>
    public double UpstreamPressure_Pa { get; internal init; } = upstreamPressure_Pa;

    /// <summary>Stagnation temperature upstream [K].</summary>
    public double UpstreamTemperature_K { get; } = upstreamTemperature_K;

    /// <summary>Static pressure downstream [Pa].</summary>
    public double DownstreamPressure_Pa { get; internal init; } = downstreamPressure_Pa;

    /// <summary>Specific gas constant of the upstream gas [J/(kg K)].</summary>
    public double GasConstant_J_per_kgK { get; } = gasConstant_J_per_kgK;

    /// <summary>Ratio of heat capacities of the upstream gas [-].</summary>
    public double HeatCapacityRatio { get; } = heatCapacityRatio;

    /// <summary>Diameter of one hole [m].</summary>
    public double HoleDiameter_m { get; } = holeDiameter_m;

    /// <summary>Thickness of the wall, the length of the hole [m].</summary>
    public double WallThickness_m { get; internal init; } = wallThickness_m;

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
