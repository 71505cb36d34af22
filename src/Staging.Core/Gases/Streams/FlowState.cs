namespace Staging.Core.Gases;

/// <summary>
/// Gas in motion, as plain numbers in any consistent set of units (SI, or dimensionless), for kernels and closed forms.
/// </summary>
/// <param name="Density">Density rho [kg/m3 or any consistent unit], above 0 (0 in a vacuum).</param>
/// <param name="Velocity">Velocity u [m/s or consistent], positive to the right.</param>
/// <param name="Pressure">Pressure p [Pa or consistent], above 0 (0 in a vacuum).</param>
/// <param name="Gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
public readonly record struct FlowState(double Density, double Velocity, double Pressure, double Gamma)
{
    /// <summary>Speed of sound [that of the velocity], the root of gamma p/rho; 0 in a vacuum.</summary>
    public double SoundSpeed => Density > 0 ? Math.Sqrt(Gamma * Pressure / Density) : 0;
}
