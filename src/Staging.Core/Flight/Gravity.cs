using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>Gravity above the site: inverse square of the distance from the centre of the Earth, or uniform.</summary>
public sealed record Gravity
{
    /// <summary>
    /// Standard gravity 9.80665 m/s2 at sea level over a radius of 6356.766 km, as in the U.S. Standard Atmosphere,
    /// 1976 (NOAA-S/T 76-1562, constants of table 2).
    /// </summary>
    public static Gravity Standard { get; } = new()
    {
        AtSeaLevel = Acceleration.FromMetersPerSecondSquared(9.80665),
        Radius = Length.FromMeters(6_356_766)
    };

    /// <summary>Acceleration at sea level [m/s2], 0.1 to 30. It varies with latitude from 9.780 to 9.832.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Acceleration AtSeaLevel
    {
        get;
        init
        {
            Guard.In(value.MetersPerSecondSquared, 0.1, 30, "m/s2");
            field = value;
        }
    }

    /// <summary>Distance of sea level from the centre [m], 1000 km to 100000 km; null makes gravity uniform.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length? Radius { get; init => field = value is { } r ? Guard.In(r, 1e6, 1e8) : null; }

    /// <summary>The acceleration at an altitude above sea level.</summary>
    /// <param name="altitude">Geometric altitude [m].</param>
    /// <returns>g = g0 (R/(R + z))^2 [m/s2].</returns>
    public Acceleration At(Length altitude)
    {
        double g0 = AtSeaLevel.MetersPerSecondSquared;
        if (Radius is not { } radius)
            return AtSeaLevel;
        double q = radius.Meters / (radius.Meters + altitude.Meters);
        return Acceleration.FromMetersPerSecondSquared(g0 * q * q);
    }
}
