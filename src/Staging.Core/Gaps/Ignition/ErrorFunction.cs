using Staging.Core.Gases;

namespace Staging.Core.Gaps;

/// <summary>exp(x^2) erfc(x) for x at least 0, which neither overflows nor loses digits.</summary>
/// <remarks>
/// 2/sqrt(pi) times the integral of exp(-s^2 - 2 x s) over s from 0 to infinity (M. Abramowitz and I. A. Stegun,
/// Handbook of Mathematical Functions, 1964, 7.4.2), by 20-point Gauss-Legendre on six pieces of the stretch outside
/// which the integrand is below round-off.
/// </remarks>
internal static class ErrorFunction
{
    private const int Pieces = 6;

    /// <summary>exp(-s^2) is below round-off beyond it.</summary>
    private const double Reach = 6.5;

    /// <summary>exp(-2 x s) is below round-off where x s is beyond it.</summary>
    private const double ExponentReach = 19;

    public static double ScaledComplement(double x)
    {
        double end = x * Reach > ExponentReach ? ExponentReach / x : Reach, sum = 0;
        for (int i = 0; i < Pieces; i++)
            sum += GaussLegendre.Integrate(new Integrand(x), end * i / Pieces, end * (i + 1) / Pieces);
        return 2 / Math.Sqrt(Math.PI) * sum;
    }

    private readonly struct Integrand(double x) : IIntegrand
    {
        public double At(double s) => Math.Exp(-s * (s + 2 * x));
    }
}
