namespace Staging.Core.Gases;

// Area over sonic throat area of an isentropic stream, A/A* = (1/M) ((2/(gamma + 1)) (1 + (gamma - 1)/2 M^2))^((gamma
// + 1)/(2 (gamma - 1))), and Mach number from it on either branch. Dimensionless.
// NACA Report 1135 (Ames Research Staff, 1953), equation 80. The inverse is a Newton iteration on ln A/A* against ln
// M. That function is convex with its only minimum at M = 1, so the iteration closes in from the outer side of either
// branch and cannot change branch. Near M = 1 the area moves with the square of M - 1: a Mach number found there
// carries the square root of the error of the area. Range of the Mach number: 1e-100 to 1000, below gamma 1.013
// somewhat less, see IsentropicFlow; either inverse takes the area ratios that its branch has in that
// range.
public static partial class IsentropicFlow
{
    private const int MaxIterations = 60;

    /// <summary>A/A* at a Mach number.</summary>
    /// <param name="mach">Mach number [-], 1e-100 to 1000 (see <see cref="IsentropicFlow"/>).</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>A/A* [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double AreaRatio(double mach, double gamma)
    {
        double M = Argument.MovingMach(mach, gamma);
        return Math.Max(1, Math.Pow(2 / (gamma + 1) * (1 + (gamma - 1) / 2 * M * M), Power(gamma)) / M);
    }

    /// <summary>Mach number of the subsonic stream.</summary>
    /// <param name="areaRatio">A/A* [-], 1 to that at Mach 1e-100.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], above 0 and at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SubsonicMach(double areaRatio, double gamma)
    {
        double lnA = Checked(areaRatio, Argument.MinMach, gamma);
        double outer = -lnA - Power(gamma) * Math.Log((gamma + 1) / 2);
        return lnA == 0 ? 1 : Math.Clamp(Math.Exp(Invert(lnA, Math.Max(outer, -NearSonic(lnA, gamma)), gamma)), Argument.MinMach, 1);
    }

    /// <summary>Mach number of the supersonic stream.</summary>
    /// <param name="areaRatio">A/A* [-], 1 to that at the greatest Mach number.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SupersonicMach(double areaRatio, double gamma)
    {
        double fastest = Argument.MaxMachAt(Argument.Gamma(gamma));
        double lnA = Checked(areaRatio, fastest, gamma);
        double k = Power(gamma);
        double outer = (lnA - k * Math.Log((gamma - 1) / (gamma + 1))) / (2 * k - 1);
        return lnA == 0 ? 1 : Math.Clamp(Math.Exp(Invert(lnA, Math.Min(outer, NearSonic(lnA, gamma)), gamma)), 1, fastest);
    }

    private static double Power(double gamma) => (gamma + 1) / (2 * (gamma - 1));

    /// <summary>ln A/A* of a ratio up to that at the outermost Mach number of its branch.</summary>
    private static double Checked(double areaRatio, double outermost, double gamma) =>
        NearZero.Log1p(Guard.In(areaRatio, 1, AreaRatio(outermost, gamma), "-", nameof(areaRatio)) - 1);

    /// <summary>|ln M| from the parabola ln A = (ln M)^2 2/(gamma + 1) at the sonic point.</summary>
    private static double NearSonic(double lnA, double gamma) => Math.Sqrt((gamma + 1) / 2 * lnA);

    /// <summary>
    /// Newton on g(x) = -x + k ln(1 + (gamma - 1)/(gamma + 1) (e^(2x) - 1)) - ln A with x = ln M; g'(x) = (M^2 - 1)/(1
    /// + (gamma - 1)/2 M^2).
    /// </summary>
    private static double Invert(double lnA, double x, double gamma)
    {
        double k = Power(gamma);
        double b = (gamma - 1) / (gamma + 1);
        for (int i = 0; i < MaxIterations; i++)
        {
            double e = NearZero.Expm1(2 * x);
            double g = k * NearZero.Log1p(b * e) - x - lnA;
            double slope = e / (1 + (gamma - 1) / 2 * (e + 1));
            double step = g / slope;
            x -= step;
            if (Math.Abs(step) <= 1e-15 * Math.Max(1, Math.Abs(x)))
                break;
        }

        return x;
    }
}
