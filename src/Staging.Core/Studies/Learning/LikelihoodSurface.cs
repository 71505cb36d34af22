using MathNet.Numerics.LinearAlgebra;

namespace Staging.Core.Studies;

/// <summary>
/// A log-likelihood as a polynomial of degree two in the places of the inputs, fitted by least squares: a guess of
/// which cases are worth a run, and no more.
/// </summary>
/// <remarks>A response surface (G. E. P. Box and K. B. Wilson, J. R. Stat. Soc. B 13 (1951) 1-45).</remarks>
internal sealed class LikelihoodSurface
{
    /// <summary>Cases that each coefficient has to have before products of two inputs are taken in.</summary>
    private const int CasesEach = 4;

    /// <summary>
    /// Weight of the wish for small coefficients, in cases: it matters only where cases hardly outnumber coefficients.
    /// </summary>
    private const double Ridge = 0.01;

    private readonly bool products;
    private readonly double[] coefficients;

    private LikelihoodSurface(bool products, double[] coefficients) =>
        (this.products, this.coefficients) = (products, coefficients);

    /// <summary>Fits the polynomial.</summary>
    /// <param name="places">Places of the cases in the unit cube [-], case by case.</param>
    /// <param name="logs">Their log-likelihoods [-], finite.</param>
    /// <param name="care">How much the fit minds each of them [-].</param>
    public static LikelihoodSurface Fit(double[][] places, double[] logs, double[] care)
    {
        int inputs = places[0].Length, all = Terms(inputs, products: true);
        bool products = logs.Length >= CasesEach * all;
        int n = products ? all : Terms(inputs, products: false);
        double[] term = new double[n], right = new double[n], normal = new double[n * n];
        for (int k = 0; k < logs.Length; k++)
        {
            Write(places[k], products, term);
            for (int i = 0; i < n; i++)
            {
                double weighed = care[k] * term[i];
                right[i] += weighed * logs[k];
                for (int j = 0; j <= i; j++)
                    normal[i * n + j] += weighed * term[j];
            }
        }

        Matrix<double> matrix = Matrix<double>.Build.Dense(n, n,
            (i, j) => normal[Math.Max(i, j) * n + Math.Min(i, j)] + (i == j ? Ridge : 0));
        return new LikelihoodSurface(products, matrix.Cholesky().Solve(Vector<double>.Build.Dense(right)).ToArray());
    }

    /// <summary>The log-likelihood at places in the unit cube [-].</summary>
    public double At(ReadOnlySpan<double> places)
    {
        Span<double> term = stackalloc double[coefficients.Length];
        Write(places, products, term);
        double sum = 0;
        for (int i = 0; i < term.Length; i++)
            sum += coefficients[i] * term[i];
        return sum;
    }

    private static int Terms(int inputs, bool products) => 1 + 2 * inputs + (products ? inputs * (inputs - 1) / 2 : 0);

    /// <summary>Legendre polynomials to degree two of each place, and products of the first degrees.</summary>
    private static void Write(ReadOnlySpan<double> places, bool products, Span<double> term)
    {
        int at = 0;
        term[at++] = 1;
        for (int i = 0; i < places.Length; i++)
        {
            double x = 2 * places[i] - 1;
            term[at++] = x;
            term[at++] = 1.5 * x * x - 0.5;
            for (int j = 0; products && j < i; j++)
                term[at++] = x * (2 * places[j] - 1);
        }
    }
}
