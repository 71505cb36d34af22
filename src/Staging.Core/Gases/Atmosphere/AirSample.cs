namespace Staging.Core.Gases;

/// <summary>Air at one altitude, in SI units: four numbers that belong together.</summary>
public readonly struct AirSample
{
    /// <summary>Air at one altitude.</summary>
    /// <param name="pressure_Pa">Static pressure [Pa].</param>
    /// <param name="temperature_K">Static temperature [K].</param>
    /// <param name="density_kg_per_m3">Density [kg/m3].</param>
    /// <param name="soundSpeed_m_per_s">Speed of sound [m/s].</param>
    public AirSample(double pressure_Pa, double temperature_K, double density_kg_per_m3, double soundSpeed_m_per_s)
    {
        (Pressure_Pa, Temperature_K) = (pressure_Pa, temperature_K);
        (Density_kg_per_m3, SoundSpeed_m_per_s) = (density_kg_per_m3, soundSpeed_m_per_s);
    }

    /// <summary>Static pressure [Pa].</summary>
    public double Pressure_Pa { get; }

    /// <summary>Static temperature [K].</summary>
    public double Temperature_K { get; }

    /// <summary>Density [kg/m3].</summary>
    public double Density_kg_per_m3 { get; }

    /// <summary>Speed of sound [m/s].</summary>
    public double SoundSpeed_m_per_s { get; }
}
