using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>
/// The same air at every height: for closed forms, wind-tunnel conditions and flights too low to notice. Zero density
/// is a vacuum.
/// </summary>
public sealed record UniformAtmosphere : IAtmosphere
{
    /// <summary>Pressure [Pa], 0 to 1 MPa.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Pressure Pressure { get; init => field = Guard.In(value, 0, 1e6); }

    /// <summary>Temperature [K], 1 to 1000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Temperature { get; init => field = Guard.In(value, 1, 1000); }

    /// <summary>
    /// Density [kg/m3], 0 to 100; stated on its own, so that a closed form can have the density it asks for.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get; init => field = Guard.In(value, 0, 100); }

    /// <summary>Speed of sound [m/s], 1 to 10000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed SoundSpeed { get; init => field = Guard.In(value, 1, 10_000); }

    /// <inheritdoc/>
    public double Floor_m => -1e9;

    /// <inheritdoc/>
    public double Ceiling_m => 1e9;

    /// <inheritdoc/>
    public AirSample At(double geometricAltitude_m)
    {
        Guard.In(geometricAltitude_m, Floor_m, Ceiling_m, "m", nameof(geometricAltitude_m));
        return new AirSample(Pressure.Pascals, Temperature.Kelvins, Density.KilogramsPerCubicMeter, SoundSpeed.MetersPerSecond);
    }
}
