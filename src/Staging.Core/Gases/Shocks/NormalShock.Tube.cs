namespace Staging.Core.Gases;

/// <content>
/// The shock tube: a driver gas (4) at rest bursts into a driven gas (1) at rest. What burn-through does to the air of
/// a gap when the opening is as wide as the bore. H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), section
/// 3.2: p4/p1 = p2/p1 (1 - (gamma4 - 1)/2 (a1/a4) u2/a1)^(-2 gamma4/(gamma4 - 1)).
/// </content>
public static partial class NormalShock
{
    private const double MaxDriverRatio = 1e12;

    /// <summary>Driver pressure ratio p4/p1 of a shock tube that makes a shock.</summary>
    /// <param name="mach">Mach number of the shock in the driven gas Ms [-], 1 to 1000 (see the class).</param>
    /// <param name="drivenGamma">gamma1 [-], 1.01 to 3.</param>
    /// <param name="driverGamma">gamma4 [-], 1.01 to 3.</param>
    /// <param name="soundSpeedRatio">Speed of sound of driven over driver gas a1/a4 [-], 0.01 to 100.</param>
    /// <returns>p4/p1 [-], 1 to 1e12.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument outside its range, or a shock that this driver gas cannot make at any pressure, or not at a pressure
    /// ratio up to 1e12.
    /// </exception>
    public static double DriverPressureRatio(double mach, double drivenGamma, double driverGamma, double soundSpeedRatio)
    {
        double g1 = Argument.Gamma(drivenGamma);
        double g4 = Argument.Gamma(driverGamma);
        double fastest = FastestDriver(g4, CheckedRatio(soundSpeedRatio));
        double u2 = GasSpeed(mach, g1);
        if (u2 >= fastest)
            Guard.In(mach, 1, MachFromPistonSpeed(fastest, g1) * (1 - 1e-12), "-", nameof(mach));
        double p41 = DriverPressure(mach, u2 / fastest, g1, g4);
        if (!(p41 <= MaxDriverRatio))
            Guard.In(mach, 1, Strength(MaxDriverRatio, g1, g4, soundSpeedRatio), "-", nameof(mach));
        return Math.Min(p41, MaxDriverRatio);
    }

    /// <summary>
    /// Mach number of the shock that a driver pressure ratio of a shock tube makes: the inverse of
    /// <see cref="DriverPressureRatio"/>.
    /// </summary>
    /// <param name="driverPressureRatio">p4/p1 [-], 1 to 1e12, and no more than the greatest shock needs.</param>
    /// <param name="drivenGamma">gamma1 [-], 1.01 to 3.</param>
    /// <param name="driverGamma">gamma4 [-], 1.01 to 3.</param>
    /// <param name="soundSpeedRatio">Speed of sound of driven over driver gas a1/a4 [-], 0.01 to 100.</param>
    /// <returns>Mach number of the shock [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double MachFromDriverPressureRatio(
        double driverPressureRatio, double drivenGamma, double driverGamma, double soundSpeedRatio)
    {
        double g1 = Argument.Gamma(drivenGamma);
        double g4 = Argument.Gamma(driverGamma);
        double fastest = FastestDriver(g4, CheckedRatio(soundSpeedRatio));
        double strongest = Argument.MaxMachAt(g1);
        double u2 = GasSpeed(strongest, g1);
        double most = u2 < fastest ? Math.Min(MaxDriverRatio, DriverPressure(strongest, u2 / fastest, g1, g4)) : MaxDriverRatio;
        return Strength(Guard.In(driverPressureRatio, 1, most, "-", nameof(driverPressureRatio)), g1, g4, soundSpeedRatio);
    }

    /// <summary>
    /// Speed over a1 of the driver gas that expands into a vacuum: no shock drives the gas behind it faster.
    /// </summary>
    private static double FastestDriver(double g4, double a14) => 2 / ((g4 - 1) * a14);

    private static double DriverPressure(double Ms, double share, double g1, double g4) =>
        PressureRatio(Ms, g1) * Math.Pow(1 - share, -2 * g4 / (g4 - 1));

    private static double Strength(double p41, double g1, double g4, double a14)
    {
        RiemannSolution solution = RiemannProblem.Solve(new FlowState(g4 * p41 * a14 * a14, 0, p41, g4), new FlowState(g1, 0, 1, g1));
        double strongest = PressureRatio(Argument.MaxMachAt(g1), g1);
        return MachFromPressureRatio(Math.Clamp(solution.StarPressure, 1, strongest), g1);
    }

    private static double CheckedRatio(double soundSpeedRatio) => Guard.In(soundSpeedRatio, 0.01, 100, "-", nameof(soundSpeedRatio));
}
