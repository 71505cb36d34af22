namespace Staging.Core.Gases;

/// <summary>
/// Area over sonic throat area of an isentropic stream, A/A* = (1/M) ((2/(gamma + 1)) (1 + (gamma - 1)/2 M^2))^((gamma + 1)/(2 (gamma - 1))),
/// and Mach number from it on either branch. Dimensionless.
/// </summary>
/// <remarks>
/// NACA Report 1135 (Ames Research Staff, 1953), equation 80. The inverse is a Newton iteration on ln A/A* against ln M. That function is
/// convex with its only minimum at M = 1, so the iteration closes in from the outer side of either branch and cannot change branch.
/// Near M = 1 the area moves with the square of M - 1: a Mach number found there carries the square root of the error of the area.
/// </remarks>
public static class AreaRatio
{
    /// <summary>Greatest area ratio that is inverted.</summary>
    private const double Greatest = 1e12;

    private const int MostIterations = 60;

    /// <summary>A/A* at a Mach number.</summary>
    /// <param name="mach">Mach number [-], above 0 and at most 1000.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>A/A* [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double At(double mach, double gamma)
    {
        double M = Guard.Above(mach, 0, Argument.GreatestMach, "-", nameof(mach));
        double k = Power(Argument.Gamma(gamma));
        return Math.Max(1, Math.Pow(2 / (gamma + 1) * (1 + (gamma - 1) / 2 * M * M), k) / M);
    }

    /// <summary>Mach number of the subsonic stream.</summary>
    /// <param name="areaRatio">A/A* [-], 1 to 1e12.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], above 0 and at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SubsonicMach(double areaRatio, double gamma)
    {
        double lnA = Checked(areaRatio, gamma);
        double outer = -lnA - Power(gamma) * Math.Log((gamma + 1) / 2);
        return lnA == 0 ? 1 : Math.Min(1, Math.Exp(Invert(lnA, Math.Max(outer, -NearSonic(lnA, gamma)), gamma)));
    }

    /// <summary>Mach number of the supersonic stream.</summary>
    /// <param name="areaRatio">A/A* [-], 1 to 1e12.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 3.</param>
    /// <returns>Mach number [-], 1 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public static double SupersonicMach(double areaRatio, double gamma)
    {
        double lnA = Checked(areaRatio, gamma);
        double k = Power(gamma);
        double outer = (lnA - k * Math.Log((gamma - 1) / (gamma + 1))) / (2 * k - 1);
        return lnA == 0 ? 1 : Math.Max(1, Math.Exp(Invert(lnA, Math.Min(outer, NearSonic(lnA, gamma)), gamma)));
    }

    private static double Power(double gamma) => (gamma + 1) / (2 * (gamma - 1));

    private static double Checked(double areaRatio, double gamma)
    {
        Argument.Gamma(gamma);
        return NearZero.Log1p(Guard.In(areaRatio, 1, Greatest, "-", nameof(areaRatio)) - 1);
    }

    /// <summary>|ln M| from the parabola ln A = (ln M)^2 2/(gamma + 1) at the sonic point.</summary>
    private static double NearSonic(double lnA, double gamma) => Math.Sqrt((gamma + 1) / 2 * lnA);

    /// <summary>Newton on g(x) = -x + k ln(1 + (gamma - 1)/(gamma + 1) (e^(2x) - 1)) - ln A with x = ln M; g'(x) = (M^2 - 1)/(1 + (gamma - 1)/2 M^2).</summary>
    private static double Invert(double lnA, double x, double gamma)
    {
        double k = Power(gamma);
        double b = (gamma - 1) / (gamma + 1);
        for (int i = 0; i < MostIterations; i++)
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
