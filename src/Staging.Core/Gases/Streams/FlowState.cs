namespace Staging.Core.Gases;

/// <summary>
/// Gas in motion, as plain numbers in any consistent set of units (SI, or dimensionless), for kernels and closed forms.
/// </summary>
/// <param name="density">Density rho [kg/m3 or any consistent unit], above 0 (0 in a vacuum).</param>
/// <param name="velocity">Velocity u [m/s or consistent], positive to the right.</param>
/// <param name="pressure">Pressure p [Pa or consistent], above 0 (0 in a vacuum).</param>
/// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
public readonly struct FlowState(double density, double velocity, double pressure, double gamma)
{
    /// <summary>Density rho [kg/m3 or as given].</summary>
    public double Density { get; internal init; } = density;

    /// <summary>Velocity u [m/s or as given], positive to the right.</summary>
    public double Velocity { get; internal init; } = velocity;

    /// <summary>Pressure p [Pa or as given].</summary>
    public double Pressure { get; internal init; } = pressure;

    /// <summary>Ratio of heat capacities [-].</summary>
    public double Gamma { get; internal init; } = gamma;

    /// <summary>Speed of sound [that of the velocity], the root of gamma p/rho; 0 in a vacuum.</summary>
    public double SoundSpeed => Density > 0 ? Math.Sqrt(Gamma * Pressure / Density) : 0;
}
