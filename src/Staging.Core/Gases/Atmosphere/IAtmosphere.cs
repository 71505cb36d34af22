namespace Staging.Core.Gases;

/// <summary>
/// The air above a site. Called in the inner loop, so it speaks plain SI doubles; must be thread-safe and keep no
/// state. Plans compare by value: an air of your own should be a record.
/// </summary>
public interface IAtmosphere
{
    /// <summary>Lowest geometric altitude above mean sea level that may be asked for [m].</summary>
    double Floor_m { get; }

    /// <summary>Highest geometric altitude above mean sea level that may be asked for [m].</summary>
    double Ceiling_m { get; }

    /// <summary>The air at one altitude.</summary>
    /// <param name="geometricAltitude_m">Geometric altitude above mean sea level [m], from <see cref="Floor_m"/> to
    /// <see cref="Ceiling_m"/>.</param>
    /// <returns>Pressure, temperature, density and speed of sound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or not a number.</exception>
    AirSample At(double geometricAltitude_m);
}
