using UnitsNet;

namespace Staging.Core.Gases;

// The shock that a piston, or a gas front, drives into gas at rest. Speeds are over the speed of sound a1 of that gas.
// H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), sections 3.2 to 3.4. The greatest piston speed is
// GasSpeed behind a shock of Mach 1000: 833 for gamma 1.4, 500 for gamma 3; below gamma 1.013 the range of the Mach
// number ends earlier.
public static partial class NormalShock
{
    /// <summary>
    /// Mach number of the shock that a piston drives, Ms = q + sqrt(q^2 + 1) with q = (gamma + 1)/4 u_p/a1.
    /// </summary>
    /// <param name="pistonSpeed">u_p/a1 [-], 0 to the greatest piston speed.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number of the shock [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromPistonSpeed(double pistonSpeed, double gamma)
    {
        double q = (gamma + 1) / 4 * Speed(pistonSpeed, gamma);
        return Math.Min(Argument.MaxMachAt(gamma), q + Math.Sqrt(q * q + 1));
    }

    /// <summary>
    /// Speed of the gas behind a shock into gas at rest, u2/a1 = 2/(gamma + 1) (Ms - 1/Ms): the inverse of
    /// <see cref="MachFromPistonSpeed"/>.
    /// </summary>
    /// <param name="mach">Mach number of the shock Ms [-], 1 to 1000 (less below gamma 1.013).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>u2/a1 [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double GasSpeed(double mach, double gamma) =>
        2 / (gamma + 1) * ((Argument.ShockMach(mach, gamma) - 1) * (mach + 1) / mach);

    /// <summary>Pressure on the piston over that at rest, p2/p1.</summary>
    /// <param name="pistonSpeed">u_p/a1 [-], 0 to the greatest piston speed.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Pressure ratio [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PistonPressureRatio(double pistonSpeed, double gamma) =>
        PressureRatio(MachFromPistonSpeed(pistonSpeed, gamma), gamma);

    /// <summary>
    /// Pressure on the piston when it starts smoothly and no shock has formed yet: p/p1 = (1 + (gamma - 1)/2 u_p/a1)^(2
    /// gamma/(gamma - 1)).
    /// </summary>
    /// <param name="pistonSpeed">u_p/a1 [-], 0 to the greatest piston speed.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Pressure ratio [-], 1 or more; above that behind a shock of the same piston speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SimpleWavePressureRatio(double pistonSpeed, double gamma) => Math.Pow(
        1 + (gamma - 1) / 2 * Speed(pistonSpeed, gamma),
        2 * gamma / (gamma - 1));

    /// <summary>
    /// When the wave ahead of an evenly accelerating piston first steepens to a shock: t = 2 a1/((gamma + 1)
    /// acceleration).
    /// </summary>
    /// <param name="soundSpeed">Speed of sound of the gas at rest a1 [m/s], 10 to 10000.</param>
    /// <param name="acceleration">Acceleration of the piston [m/s2], 1e-3 to 1e9.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Time since the piston started.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Duration FormationTime(Speed soundSpeed, Acceleration acceleration, double gamma)
    {
        double a1 = Guard.In(soundSpeed, 10, 10_000, nameof(soundSpeed)).MetersPerSecond;
        double a_p = Guard.In(acceleration.MetersPerSecondSquared, 1e-3, 1e9, "m/s2", nameof(acceleration));
        return Duration.FromSeconds(2 * a1 / ((Argument.Gamma(gamma) + 1) * a_p));
    }

    /// <summary>
    /// Where the shock of <see cref="FormationTime"/> forms, ahead of the starting point of the piston: x = a1 t.
    /// </summary>
    /// <param name="soundSpeed">Speed of sound of the gas at rest a1 [m/s], 10 to 10000.</param>
    /// <param name="acceleration">Acceleration of the piston [m/s2], 1e-3 to 1e9.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Distance from the starting point of the piston.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static Length FormationDistance(Speed soundSpeed, Acceleration acceleration, double gamma) =>
        Length.FromMeters(soundSpeed.MetersPerSecond * FormationTime(soundSpeed, acceleration, gamma).Seconds);

    private static double Speed(double pistonSpeed, double gamma) =>
        Guard.In(pistonSpeed, 0, GasSpeed(Argument.MaxMachAt(Argument.Gamma(gamma)), gamma), "-", nameof(pistonSpeed));
}
