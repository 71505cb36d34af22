namespace Staging.Core.Gases;

/// <summary>
/// Adiabatic flow with wall friction in a tube of constant bore. Dimensionless; the star is the sonic state that
/// friction drives the flow towards. The friction number is N = f L/D with the Darcy friction factor f (four times the
/// Fanning factor).
/// </summary>
/// <remarks>
/// A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow (1953), chapter 6. With s = 2 (1/M^2 -
/// 1)/(gamma + 1) the friction number to the sonic state is N* = (gamma + 1)/(2 gamma) (s - ln(1 + s)): one function of
/// s for all gases, which Newton inverts from the outer side on either branch.
/// </remarks>
public static partial class FannoFlow
{
    private const int MaxIterations = 100;

    /// <summary>Friction number from a Mach number to the sonic state, f L*/D.</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>f L*/D [-], 0 at M = 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double FrictionToSonic(double mach, double gamma)
    {
        double M = Argument.MovingMach(mach, gamma);
        double v = (1 - M) * (1 + M) / (M * M);
        return (gamma + 1) / (2 * gamma) * Excess(2 * v / (gamma + 1));
    }

    /// <summary>Mach number of the subsonic flow that is sonic after a friction number.</summary>
    /// <param name="friction">f L*/D [-], 0 to <see cref="FrictionToSonic"/> at Mach 1e-100.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], above 0 and at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SubsonicMach(double friction, double gamma)
    {
        double N = Guard.In(friction, 0, FrictionToSonic(Argument.MinMach, gamma), "-", nameof(friction));
        return Math.Max(Argument.MinMach, FromS(SubsonicS(2 * gamma / (gamma + 1) * N), gamma));
    }

    /// <summary>Mach number of the supersonic flow that is sonic after a friction number.</summary>
    /// <param name="friction">f L*/D [-], 0 to <see cref="FrictionToSonic"/> at the greatest Mach number.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SupersonicMach(double friction, double gamma)
    {
        double fastest = Argument.MaxMachAt(Argument.Gamma(gamma));
        double N = Guard.In(friction, 0, FrictionToSonic(fastest, gamma), "-", nameof(friction));
        double c = 2 * gamma / (gamma + 1) * N;
        double s = -Math.Min(Math.Sqrt(2 * c), -NearZero.Expm1(-1 - c));
        return Math.Min(fastest, FromS(Newton(c, s), gamma));
    }

    /// <summary>T/T* = (gamma + 1)/(2 + (gamma - 1) M^2).</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>T/T* [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double TemperatureRatio(double mach, double gamma)
    {
        double M = Argument.MovingMach(mach, gamma);
        return (gamma + 1) / (2 + (gamma - 1) * M * M);
    }

    /// <summary>p/p* = sqrt(T/T*)/M.</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>p/p* [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double PressureRatio(double mach, double gamma) => Math.Sqrt(TemperatureRatio(mach, gamma)) / mach;

    /// <summary>rho/rho* = (p/p*)/(T/T*).</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>rho/rho* [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double DensityRatio(double mach, double gamma) => 1 / (Math.Sqrt(TemperatureRatio(mach, gamma)) * mach);

    /// <summary>p0/p0*, equal to the isentropic area ratio at the same Mach number.</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>p0/p0* [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double StagnationPressureRatio(double mach, double gamma) => IsentropicFlow.AreaRatio(mach, gamma);

    /// <summary>Flow of a choked tube fed by a smooth entrance over that of an ideal nozzle of the same bore.</summary>
    /// <param name="friction">f L/D of the tube [-], 0 to <see cref="FrictionToSonic"/> at Mach 1e-100; an entrance
    /// loss of K dynamic heads adds K.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Ratio of mass flows [-], at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ChokedFlowReduction(double friction, double gamma) =>
        1 / IsentropicFlow.AreaRatio(SubsonicMach(friction, gamma), gamma);

    /// <summary>
    /// Pressure at the sonic end of such a tube over the stagnation pressure ahead of it: the tube chokes at and below
    /// it.
    /// </summary>
    /// <param name="friction">f L/D [-], 0 to <see cref="FrictionToSonic"/> at Mach 1e-100.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>p*/p01 [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ChokedPressureRatio(double friction, double gamma)
    {
        double M1 = SubsonicMach(friction, gamma);
        return IsentropicFlow.PressureRatio(M1, gamma) / PressureRatio(M1, gamma);
    }

    internal static double SubsonicS(double c) => Newton(c, c + Math.Sqrt(2 * c));

    /// <summary>M from s = 2 (1/M^2 - 1)/(gamma + 1).</summary>
    internal static double FromS(double s, double gamma) => 1 / Math.Sqrt(1 + (gamma + 1) / 2 * s);

    /// <summary>s - ln(1 + s), by its series where the two cancel.</summary>
    internal static double Excess(double s)
    {
        const double Small = 0.1;
        if (Math.Abs(s) >= Small)
            return s - NearZero.Log1p(s);
        const int LastPower = 20;
        double sum = 0;
        for (int n = LastPower; n >= 2; n--)
            sum = (n % 2 == 0 ? 1.0 : -1.0) / n + s * sum;
        return s * s * sum;
    }

    /// <summary>
    /// Newton on s - ln(1 + s) = c from a start at or beyond the root; the function is convex, so the branch is kept.
    /// </summary>
    private static double Newton(double c, double s)
    {
        if (c == 0)
            return 0;
        for (int i = 0; i < MaxIterations; i++)
        {
            double step = (Excess(s) - c) * (1 + s) / s;
            s -= step;
            if (Math.Abs(step) <= 1e-9 * Math.Abs(s))
                break;
        }

        return s;
    }
}
