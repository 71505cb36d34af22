using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>
/// The isentropic mass flow function psi of NACA Report 1135 (1953), see <see cref="IsentropicFlow.ThroatMassFlow"/>,
/// in the form that orifice laws use: as a function of the relative pressure fall d = 1 - r, with the blend of
/// <see cref="SmoothRoot"/> near d = 0, and with its slope.
/// </summary>
internal static class NozzleFunction
{
    // The critical ratio falls from exp(-1/2) = 0.6065 at gamma 1 to 0.4871 at gamma 5/3: outside this interval the
    // comparison needs no power.
    private const double AlwaysSubsonicAbove = 0.607;
    private const double AlwaysChokedBelow = 0.487;

    /// <summary>psi [-] at the relative pressure fall d, 0 to 1.</summary>
    public static double Value(double d, double gamma)
    {
        if (d < Orifice.BlendWidth)
            return SmoothRoot.Inside(d) * Math.Sqrt(2 * Series(d, gamma));
        double r = 1 - d;
        if (r < AlwaysChokedBelow)
            return IsentropicFlow.Unchecked.CriticalFlowFactor(gamma);
        double x = Math.Pow(r, 1 / gamma);
        return IsChoked(r, x, gamma)
            ? IsentropicFlow.Unchecked.CriticalFlowFactor(gamma)
            : Math.Sqrt(2 * gamma / (gamma - 1) * x * (x - r));
    }

    /// <summary>psi and d psi/dr at the relative pressure fall d.</summary>
    public static PhiDerivative WithSlope(double d, double gamma)
    {
        if (d < Orifice.BlendWidth)
        {
            double h = Math.Sqrt(2 * Series(d, gamma));
            double s = SmoothRoot.Inside(d);
            return new PhiDerivative(s * h, -(SmoothRoot.SlopeInside(d) * h + s * SeriesSlope(d, gamma) / h));
        }
        double r = 1 - d;
        if (r < AlwaysChokedBelow)
            return new PhiDerivative(IsentropicFlow.Unchecked.CriticalFlowFactor(gamma), 0);
        double x = Math.Pow(r, 1 / gamma);
        if (IsChoked(r, x, gamma))
            return new PhiDerivative(IsentropicFlow.Unchecked.CriticalFlowFactor(gamma), 0);
        double k = 2 * gamma / (gamma - 1);
        double psi = Math.Sqrt(k * x * (x - r));
        return new PhiDerivative(psi, k * x * ((2 * x - r) / (gamma * r) - 1) / (2 * psi));
    }

    /// <summary>
    /// q = psi^2 / (2 d) [-] of the unblended subsonic function, which is 1 at equal pressures, and dq/dr.
    /// </summary>
    public static PhiDerivative QuotientWithSlope(double d, double gamma)
    {
        if (d < Orifice.BlendWidth)
            return new PhiDerivative(Series(d, gamma), -SeriesSlope(d, gamma));
        double r = 1 - d;
        double x = Math.Pow(r, 1 / gamma);
        double k = gamma / (gamma - 1);
        double q = k * x * (x - r) / d;
        return new PhiDerivative(q, (k * x * ((2 * x - r) / (gamma * r) - 1) + q) / d);
    }

    // T*/T0 = 2/(gamma+1), and T/T0 at the jet is r^((gamma-1)/gamma) = r/x.
    private static bool IsChoked(double r, double x, double gamma) => r <= AlwaysSubsonicAbove && r * (gamma + 1) <= 2 * x;

    // psi^2/(2d) = ((1-d)^a - (1-d)^b) / ((b-a) d) with a = 2/gamma, b = 1 + 1/gamma: binomial series; five terms leave
    // less than 1e-14 below the blend width.
    private static double Series(double d, double gamma)
    {
        double a = 2 / gamma;
        double b = 1 + 1 / gamma;
        double ta = a;
        double tb = b;
        double sum = tb - ta;
        double power = 1;
        for (int k = 2; k <= 5; k++)
        {
            ta *= (k - 1 - a) / k;
            tb *= (k - 1 - b) / k;
            power *= d;
            sum += (tb - ta) * power;
        }
        return sum / (b - a);
    }

    // Its derivative with respect to d.
    private static double SeriesSlope(double d, double gamma)
    {
        double a = 2 / gamma;
        double b = 1 + 1 / gamma;
        double ta = a;
        double tb = b;
        double sum = 0;
        double power = 1;
        for (int k = 2; k <= 5; k++)
        {
            ta *= (k - 1 - a) / k;
            tb *= (k - 1 - b) / k;
            sum += (k - 1) * (tb - ta) * power;
            power *= d;
        }
        return sum / (b - a);
    }
}
