using UnitsNet;

namespace Staging.Core.Fronts;

/// <summary>
/// The tip of a jet that has just begun to flow into still air, not yet guided by a wall: how far it gets before it
/// fills the tube.
/// </summary>
/// <remarks>
/// Z = Gamma (M/rho_a)^(1/4) t^(1/2) with the momentum flow M of the opening and Gamma = 3.0 (plus or minus 0.1), for
/// compressible and under-expanded jets too: P. G. Hill and P. Ouellette, "Transient turbulent gaseous fuel jets for
/// diesel engines", J. Fluids Eng. 121 (1999) 93-101. A starting jet is about a quarter as wide as it is long (same
/// source, from memory), so it fills a bore D at about Z = 4 D; beyond that the wall guides the gas and
/// <see cref="DisplacementFront"/> is the model.
/// </remarks>
internal static class StartingJet
{
    /// <summary>Gamma of the source [-].</summary>
    private const double Gamma = 3.0;

    /// <summary>Length of a starting jet over its width [-].</summary>
    private const double Slenderness = 4;

    /// <summary>Momentum flow of an opening, rho U^2 A.</summary>
    /// <param name="opening">Diameter of the opening [m], 0.1 mm to 1 m.</param>
    /// <param name="density">Density of the gas in the opening [kg/m3], 1e-4 to 1000.</param>
    /// <param name="speed">Its speed there [m/s], 0 to 5000.</param>
    /// <returns>The momentum flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Force Momentum(Length opening, Density density, Speed speed)
    {
        double d = Guard.In(opening, 1e-4, 1, nameof(opening)).Meters, U = Guard.In(speed, 0, 5000, nameof(speed)).MetersPerSecond;
        double rho = Guard.In(density, 1e-4, 1000, nameof(density)).KilogramsPerCubicMeter;
        return Force.FromNewtons(rho * U * U * Math.PI / 4 * d * d);
    }

    /// <summary>Distance that the tip has covered.</summary>
    /// <param name="momentum">Momentum flow of the opening [N], 0 to 1e6.</param>
    /// <param name="air">Density of the air [kg/m3], 1e-3 to 1000.</param>
    /// <param name="time">Time since the jet began [s], 0 to 10.</param>
    /// <returns>Distance of the tip from the opening.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Length TipAt(Force momentum, Density air, Duration time) =>
        Length.FromMeters(Gamma * Math.Sqrt(Root(momentum, air) * Guard.In(time, 0, 10, nameof(time)).Seconds));

    /// <summary>When the tip arrives at a station: the inverse of <see cref="TipAt"/>.</summary>
    /// <param name="momentum">Momentum flow of the opening [N], above 0 and at most 1e6.</param>
    /// <param name="air">Density of the air [kg/m3], 1e-3 to 1000.</param>
    /// <param name="station">Distance from the opening [m], 0 to 10.</param>
    /// <returns>Time since the jet began.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Duration ArrivalAt(Force momentum, Density air, Length station)
    {
        Guard.Above(momentum.Newtons, 0, 1e6, "N", nameof(momentum));
        double z = Guard.In(station, 0, 10, nameof(station)).Meters / Gamma;
        return Duration.FromSeconds(z * z / Root(momentum, air));
    }

    /// <summary>Where the jet fills a bore, and a guided front begins: about four bores from the opening.</summary>
    /// <param name="bore">Inner diameter [m], 1 mm to 1 m.</param>
    /// <returns>Distance from the opening.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Length FillsBoreAt(Length bore) => Slenderness * Guard.In(bore, 1e-3, 1, nameof(bore));

    /// <summary>(M/rho_a)^(1/2) [m2/s].</summary>
    private static double Root(Force momentum, Density air) => Math.Sqrt(
        Guard.In(momentum, 0, 1e6, nameof(momentum)).Newtons / Guard.In(air, 1e-3, 1000, nameof(air)).KilogramsPerCubicMeter);
}
