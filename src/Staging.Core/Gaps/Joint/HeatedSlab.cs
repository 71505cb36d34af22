using Staging.Core.Solving;

namespace Staging.Core.Gaps;

/// <summary>
/// A slab heated at one face by convection, insulated at the other: far-face temperature in closed form. Dimensionless:
/// time as the Fourier number alpha t/d^2, temperature as the share of the first excess that is left.
/// </summary>
/// <remarks>
/// H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids (2nd ed. 1959), section 3.11 (from memory):
/// theta = sum of C exp(-z^2 Fo) with z tan z = Bi and C = 4 sin z/(2 z + sin 2z) (cosine 1 at the insulated face).
/// </remarks>
internal static class HeatedSlab
{
    private const int Terms = 40;

    /// <summary>
    /// Earliest Fourier number for which the series is used: the far face has then moved by less than 1e-10.
    /// </summary>
    private const double Earliest = 0.01;

    /// <summary>Share of the first excess left at the far face [-].</summary>
    public static double FarFace(double fourier, double biot)
    {
        double sum = 0;
        for (int n = 0; n < Terms; n++)
        {
            double z = Root(n, biot), fall = Math.Exp(-z * z * fourier);
            sum += 4 * Math.Sin(z) / (2 * z + Math.Sin(2 * z)) * fall;
            if (fall < 1e-17)
                break;
        }

        return sum;
    }

    /// <summary>
    /// Fourier number at which the far face has a share of its first excess left, above 0 and below 1.
    /// </summary>
    public static double TimeOfFarFace(double share, double biot)
    {
        double high = Earliest;
        while (FarFace(high, biot) > share)
            high *= 2;
        if (high == Earliest)
            return high;
        var ahead = new Ahead(share, biot);
        double low = high / 2;
        return BracketedRoot.Shrink(ref ahead, low, ahead.At(low), high, ahead.At(high), 0).High;
    }

    /// <summary>Root n of z tan z = Bi, which lies between n pi and n pi + pi/2.</summary>
    private static double Root(int n, double biot)
    {
        var f = new RootFunction(biot);
        double low = n * Math.PI, high = low + Math.PI / 2;
        return BracketedRoot.Shrink(ref f, low, n % 2 == 0 ? -1 : 1, high, f.At(high), 0).High;
    }

    /// <summary>z sin z - Bi cos z, which has no poles.</summary>
    private readonly struct RootFunction(double biot) : IScalarFunction
    {
        public double At(double z) => z * Math.Sin(z) - biot * Math.Cos(z);
    }

    private readonly struct Ahead(double share, double biot) : IScalarFunction
    {
        public double At(double fourier) => FarFace(fourier, biot) - share;
    }
}
