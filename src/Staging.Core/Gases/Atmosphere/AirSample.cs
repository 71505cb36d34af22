namespace Staging.Core.Gases;

/// <summary>Air at one altitude, in SI units.</summary>
/// <param name="Pressure_Pa">Static pressure [Pa].</param>
/// <param name="Temperature_K">Static temperature [K].</param>
/// <param name="Density_kg_per_m3">Density [kg/m3].</param>
/// <param name="SoundSpeed_m_per_s">Speed of sound [m/s].</param>
public readonly record struct AirSample(double Pressure_Pa, double Temperature_K, double Density_kg_per_m3, double SoundSpeed_m_per_s);
