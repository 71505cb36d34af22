using System.Runtime.CompilerServices;

namespace Staging.Core.Validation;

/// <summary>A smooth function of the ratio of heat capacities between 1.25 and 1.4 as the polynomial of degree eight through its values at Chebyshev points.</summary>
internal readonly struct GammaPolynomial
{
    private const int Degree = 8;
    private const double Middle = 1.325, Half = 0.075;

    private readonly double c0, c1, c2, c3, c4, c5, c6, c7, c8;

    public GammaPolynomial(Func<double, double> f)
    {
        Span<double> x = stackalloc double[Degree + 1], d = stackalloc double[Degree + 1], c = stackalloc double[Degree + 1];
        for (int i = 0; i <= Degree; i++)
        {
            x[i] = Half * Math.Cos(Math.PI * (2 * i + 1) / (2 * Degree + 2));
            d[i] = f(Middle + x[i]);
        }

        // Divided differences of Newton, then nested multiplication into powers of gamma - 1.325.
        for (int j = 1; j <= Degree; j++)
        {
            for (int i = Degree; i >= j; i--)
                d[i] = (d[i] - d[i - 1]) / (x[i] - x[i - j]);
        }

        c.Clear();
        for (int k = Degree; k >= 0; k--)
        {
            for (int i = Degree; i > 0; i--)
                c[i] = c[i - 1] - x[k] * c[i];
            c[0] = d[k] - x[k] * c[0];
        }

        (c0, c1, c2, c3, c4, c5, c6, c7, c8) = (c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8]);
    }

    /// <summary>The value, in pairs of terms that do not wait for each other.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double At(double gamma)
    {
        double u = gamma - Middle, u2 = u * u, u4 = u2 * u2;
        double low = Fma(u2, Fma(u, c3, c2), Fma(u, c1, c0)), high = Fma(u2, Fma(u, c7, c6), Fma(u, c5, c4));
        return Fma(u4, Fma(u4, c8, high), low);
    }

    private static double Fma(double a, double b, double c) => Math.FusedMultiplyAdd(a, b, c);
}
