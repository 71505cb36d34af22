namespace Staging.Core.Gases;

/// <summary>
/// The shock tube: a driver gas (4) at rest bursts into a driven gas (1) at rest. What burn-through does to the air of a gap when
/// the opening is as wide as the bore. Dimensionless.
/// </summary>
/// <remarks>
/// H. W. Liepmann and A. Roshko, Elements of Gasdynamics (1957), section 3.2:
/// p4/p1 = p2/p1 (1 - (gamma4 - 1)/2 (a1/a4) u2/a1)^(-2 gamma4/(gamma4 - 1)).
/// </remarks>
public static class ShockTube
{
    /// <summary>Driver pressure ratio p4/p1 that makes a shock.</summary>
    /// <param name="mach">Mach number of the shock in the driven gas Ms [-], 1 to 1000.</param>
    /// <param name="drivenGamma">gamma1 [-], 1.01 to 3.</param>
    /// <param name="driverGamma">gamma4 [-], 1.01 to 3.</param>
    /// <param name="soundSpeedRatio">Speed of sound of driven over driver gas a1/a4 [-], 0.01 to 100.</param>
    /// <returns>p4/p1 [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range, or a shock that this driver gas cannot make at any pressure.</exception>
    public static double DriverPressureRatio(double mach, double drivenGamma, double driverGamma, double soundSpeedRatio)
    {
        double g4 = Argument.Gamma(driverGamma);
        double fastest = 2 / ((g4 - 1) * CheckedRatio(soundSpeedRatio));
        double u2 = PistonShock.GasSpeed(mach, drivenGamma);
        if (u2 >= fastest)
            Guard.In(mach, 1, PistonShock.Mach(Math.Min(fastest, PistonShock.GreatestSpeed), drivenGamma) * (1 - 1e-12), "-", nameof(mach));
        return NormalShock.PressureRatio(mach, drivenGamma) * Math.Pow(1 - u2 / fastest, -2 * g4 / (g4 - 1));
    }

    /// <summary>Mach number of the shock that a driver pressure ratio makes: the inverse of <see cref="DriverPressureRatio"/>.</summary>
    /// <param name="driverPressureRatio">p4/p1 [-], 1 to 1e6.</param>
    /// <param name="drivenGamma">gamma1 [-], 1.01 to 3.</param>
    /// <param name="driverGamma">gamma4 [-], 1.01 to 3.</param>
    /// <param name="soundSpeedRatio">Speed of sound of driven over driver gas a1/a4 [-], 0.01 to 100.</param>
    /// <returns>Mach number of the shock [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double ShockMach(double driverPressureRatio, double drivenGamma, double driverGamma, double soundSpeedRatio)
    {
        double p41 = Guard.In(driverPressureRatio, 1, 1e6, "-", nameof(driverPressureRatio));
        double g1 = Argument.Gamma(drivenGamma);
        double g4 = Argument.Gamma(driverGamma);
        double a4 = 1 / CheckedRatio(soundSpeedRatio);
        RiemannSolution solution = RiemannProblem.Solve(new FlowState(g4 * p41 / (a4 * a4), 0, p41, g4), new FlowState(g1, 0, 1, g1));
        return NormalShock.MachFromPressureRatio(Math.Max(1, solution.StarPressure), g1);
    }

    private static double CheckedRatio(double soundSpeedRatio) => Guard.In(soundSpeedRatio, 0.01, 100, "-", nameof(soundSpeedRatio));
}
