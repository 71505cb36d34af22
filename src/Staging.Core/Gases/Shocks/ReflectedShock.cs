namespace Staging.Core.Gases;

/// <summary>
/// A normal shock that has run into gas at rest and come back from a closed end. Dimensionless; 1 is the gas at rest, 2
/// behind the incident shock, 5 behind the reflected one (at rest again).
/// </summary>
/// <param name="IncidentPressureRatio">p2/p1 [-].</param>
/// <param name="ReflectedMach">Mach number of the reflected shock against the gas it meets [-].</param>
/// <param name="ReflectedPressureRatio">p5/p2 [-].</param>
/// <param name="TotalPressureRatio">p5/p1 [-].</param>
/// <param name="TotalTemperatureRatio">T5/T1 [-].</param>
/// <param name="TotalDensityRatio">rho5/rho1 [-].</param>
/// <param name="ReflectedSpeed">Speed of the reflected shock away from the wall over a1 [-].</param>
public readonly record struct ReflectedShock(
    double IncidentPressureRatio,
    double ReflectedMach,
    double ReflectedPressureRatio,
    double TotalPressureRatio,
    double TotalTemperatureRatio,
    double TotalDensityRatio,
    double ReflectedSpeed);
