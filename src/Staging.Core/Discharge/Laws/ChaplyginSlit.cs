using Staging.Core.Gases;

namespace Staging.Core.Discharge;

/// <summary>
/// The exact plane solution used as a reference for models of a sharp edge: a subsonic jet of perfect gas from a
/// straight slit in an infinite wall, S. A. Chaplygin, On gas jets (1904; NACA Technical Memorandum 1063, 1944), by the
/// hodograph method.
/// </summary>
/// <remarks>
/// 1/Cc = 1 + (8/pi) sum over n of (-1)^(n+1) n x_n / (4 n^2 - 1), with x_n = 1 + tau F'_n/(n F_n), F_n = 2F1(a, b;
/// 2n+1; tau), a + b = 2n - 1/(gamma-1), a b = -n (2n+1)/(gamma-1), tau = 1 - r^((gamma-1)/gamma). For an
/// incompressible jet all x_n are 1 and Cc = pi/(pi + 2). A plane slit is not a round hole: it is a reference, not a
/// law.
/// </remarks>
internal static class ChaplyginSlit
{
    // The alternating sum is accelerated; the error falls as 5.8^-n (Cohen, Rodriguez Villegas and Zagier 2000).
    private const int Terms = 32;

    /// <summary>Contraction coefficient, jet width over slit width, of the subsonic or just sonic jet.</summary>
    /// <param name="pressureRatio">Downstream over upstream pressure [-], from the critical ratio to 1.</param>
    /// <param name="gamma">Ratio of heat capacities [-], 1.01 to 5/3.</param>
    /// <returns>Cc [-].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Below the critical ratio, where the jet is supersonic and the
    /// solution ends.</exception>
    public static double ContractionCoefficient(double pressureRatio, double gamma)
    {
        Guard.In(gamma, 1.01, 5.0 / 3.0, property: nameof(gamma));
        double critical = IsentropicFlow.CriticalPressureRatio(gamma);
        Guard.In(pressureRatio, critical * (1 - 1e-12), 1, property: nameof(pressureRatio));
        double tau = 1 - Math.Pow(pressureRatio, (gamma - 1) / gamma);
        return 1 / (1 + 8 / Math.PI * AlternatingSum(tau, 1 / (gamma - 1)));
    }

    // Cohen, Rodriguez Villegas and Zagier, Convergence acceleration of alternating series, Experimental Mathematics 9
    // (2000), algorithm 1.
    private static double AlternatingSum(double tau, double beta)
    {
        double d = Math.Pow(3 + Math.Sqrt(8), Terms);
        d = (d + 1 / d) / 2;
        double b = -1;
        double c = -d;
        double sum = 0;
        for (int k = 0; k < Terms; k++)
        {
            int n = k + 1;
            c = b - c;
            sum += c * n * LogDerivative(n, tau, beta) / (4.0 * n * n - 1);
            b *= (k + Terms) * (double)(k - Terms) / ((k + 0.5) * (k + 1));
        }
        return sum / d;
    }

    // x_n from the continued fraction of N. E. Norlund (1911) for F(a,b;c)/F(a+1,b+1;c+1), evaluated from its tail; it
    // needs a and b only through their sum and product, and stays accurate where the power series cancels.
    private static double LogDerivative(int n, double tau, double beta)
    {
        double sum = 2 * n - beta;
        double product = -n * (2 * n + 1) * beta;
        double c = 2 * n + 1;
        double fraction = 0;
        for (int m = 60 + 6 * n; m >= 1; m--)
        {
            double numerator = (product + m * sum + (double)m * m) * tau * (1 - tau);
            fraction = numerator / (c + m - (sum + 2 * m + 1) * tau + fraction);
        }
        return 1 + tau * product / (c - (sum + 1) * tau + fraction) / n;
    }
}
