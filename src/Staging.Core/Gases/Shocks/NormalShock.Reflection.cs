namespace Staging.Core.Gases;

// Reflection of a normal shock at a closed end: p5/p2 = ((3 gamma - 1) p2/p1 - (gamma - 1))/((gamma - 1) p2/p1 + gamma
// + 1).
// H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), section 3.5. A weak wave doubles its rise of pressure;
// a strong one multiplies pressure by (3 gamma - 1)/(gamma - 1): 8 for air, 11 for gamma 1.25.
public static partial class NormalShock
{
    /// <summary>
    /// A shock that has run into gas at rest and come back from a closed end: 1 is the gas at rest, 2 behind the
    /// incident shock, 5 behind the reflected one (at rest again).
    /// </summary>
    /// <param name="mach">Mach number of the incident shock into gas at rest Ms [-], 1 to 1000 (see
    /// <see cref="NormalShock"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>
    /// Mach number of the reflected shock against the gas it meets, p5/p2, p5/p1, T5/T1, rho5/rho1, and the speed of
    /// the reflected shock away from the wall over a1 [-].
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static (double ReflectedMach, double ReflectedPressureRatio, double TotalPressureRatio, double TotalTemperatureRatio,
        double TotalDensityRatio, double ReflectedSpeed) Reflected(double mach, double gamma)
    {
        double p21 = PressureRatio(mach, gamma);
        // A shock of no strength reflects as one: round-off must not make it an expansion.
        double p52 = Math.Max(1, ((3 * gamma - 1) * p21 - (gamma - 1)) / ((gamma - 1) * p21 + gamma + 1));
        double M_r = MachFromPressureRatio(p52, gamma);
        double T21 = TemperatureRatio(mach, gamma);
        double rho21 = DensityRatio(mach, gamma);
        double rho52 = HugoniotDensityRatio(p52, gamma);
        double u2 = GasSpeed(mach, gamma);
        return (M_r, p52, p52 * p21, T21 * (p52 / rho52), rho21 * rho52, M_r * Math.Sqrt(T21) - u2);
    }
}
