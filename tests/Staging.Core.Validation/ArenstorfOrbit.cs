namespace Staging.Core.Validation;

/// <summary>
/// The restricted three-body problem with a closed orbit of four loops (R. F. Arenstorf 1963), as stated by E. Hairer, S. P. Norsett and
/// G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. (1993), section II.0. States x, y and their rates.
/// </summary>
internal readonly struct ArenstorfOrbit : IPublishedProblem
{
    private const double Mu = 0.012277471;

    public const double Period = 17.0652165601579625588917206249;

    public static double[] Start => [0.994, 0, 0, -2.00158510637908252240537862224];

    public int Dimension => 4;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double a = y[0] + Mu, b = y[0] - (1 - Mu);
        double d1 = Math.Pow(a * a + y[1] * y[1], 1.5), d2 = Math.Pow(b * b + y[1] * y[1], 1.5);
        dydt[0] = y[2];
        dydt[1] = y[3];
        dydt[2] = y[0] + 2 * y[3] - (1 - Mu) * a / d1 - Mu * b / d2;
        dydt[3] = y[1] - 2 * y[2] - (1 - Mu) * y[1] / d1 - Mu * y[1] / d2;
    }
}
