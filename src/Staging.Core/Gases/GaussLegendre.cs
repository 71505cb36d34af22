namespace Staging.Core.Gases;

/// <summary>
/// A function of one variable to be integrated, as a struct so that the rule calls it without dispatch.
/// </summary>
internal interface IIntegrand
{
    double At(double x);
}

/// <summary>
/// Gauss-Legendre quadrature with 20 points: exact for polynomials up to degree 39. Nodes are the roots of P20, found
/// by Newton's method in 40-digit arithmetic; weights are 2/((1 - x^2) P20'(x)^2).
/// </summary>
internal static class GaussLegendre
{
    private static ReadOnlySpan<double> Nodes =>
    [
        0.07652652113349733375, 0.22778585114164507808, 0.37370608871541956067, 0.51086700195082709800, 0.63605368072651502545,
        0.74633190646015079261, 0.83911697182221882339, 0.91223442825132590586, 0.96397192727791379126, 0.99312859918509492478,
    ];

    private static ReadOnlySpan<double> Weights =>
    [
        0.15275338713072585069, 0.14917298647260374678, 0.14209610931838205132, 0.13168863844917662689, 0.11819453196151841731,
        0.10193011981724043503, 0.08327674157670474872, 0.06267204833410906356, 0.04060142980038694133, 0.01761400713915211831,
    ];

    /// <summary>Integral from a to b.</summary>
    public static double Integrate<TIntegrand>(in TIntegrand f, double a, double b)
        where TIntegrand : struct, IIntegrand
    {
        double middle = 0.5 * (a + b);
        double half = 0.5 * (b - a);
        double sum = 0;
        for (int i = 0; i < Nodes.Length; i++)
            sum += Weights[i] * (f.At(middle - half * Nodes[i]) + f.At(middle + half * Nodes[i]));
        return half * sum;
    }
}
