namespace Staging.Core.Gaps;

/// <summary>Two bounds of the speed at which the pressure of the chamber throws the pieces of the web.</summary>
/// <remarks>
/// Slow: the overpressure acts on the faces over a way of half a radius, after which the gas passes between the
/// pieces: M v^2/2 = dp pi R^2 R/2. Fast: all the work that the gas of the chamber does beyond pushing back the air
/// as it expands to the pressure outside along an isentrope. A chamber that is short, or hardly above the outside, has
/// not the gas to hold its pressure over half a radius: the work is then the only bound.
/// </remarks>
internal static class PieceThrow
{
    /// <summary>Slow bound [m/s], for a plate of a radius and a mean thickness [m].</summary>
    public static double Slow(double overpressure, double radius, double density, double thickness) =>
        Math.Sqrt(overpressure * radius / (density * thickness));

    /// <summary>Fast bound [m/s].</summary>
    /// <param name="pressure">Absolute chamber pressure [Pa].</param>
    /// <param name="outside">Pressure beyond the web [Pa].</param>
    /// <param name="volume">Volume of the chamber [m3].</param>
    /// <param name="gamma">Ratio of heat capacities of its gas [-].</param>
    /// <param name="mass">Mass of the pieces [kg].</param>
    public static double Fast(double pressure, double outside, double volume, double gamma, double mass)
    {
        double ratio = outside / pressure, expanded = Math.Pow(ratio, -1 / gamma);
        double work = volume * (pressure * (1 - ratio * expanded) / (gamma - 1) - outside * (expanded - 1));
        return Math.Sqrt(2 * work / mass);
    }
}
