namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// The plane two-body problem with eccentricity 0.3 over one revolution: problem D2 of Hull, Enright, Fellen and Sedgwick, SIAM J. Numer. Anal. 9
/// (1972) 603-637. Autonomous. The exact state follows from Kepler's equation u - e sin u = t, solved here by Newton's method.
/// </summary>
internal readonly struct KeplerOrbit : IUnwatchedProblem
{
    private const double E = 0.3;

    public static double Start => 0;

    public static double Stop => 2 * Math.PI;

    public static double[] Scales => [1, 1, 1, 1];

    public int Dimension => 4;

    public static double[] Exact(double t)
    {
        double u = t;
        for (int i = 0; i < 50; i++)
            u -= (u - E * Math.Sin(u) - t) / (1 - E * Math.Cos(u));
        double b = Math.Sqrt(1 - E * E), rate = 1 / (1 - E * Math.Cos(u));
        return [Math.Cos(u) - E, b * Math.Sin(u), -Math.Sin(u) * rate, b * Math.Cos(u) * rate];
    }

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        double r2 = y[0] * y[0] + y[1] * y[1], r3 = r2 * Math.Sqrt(r2);
        dydt[0] = y[2];
        dydt[1] = y[3];
        dydt[2] = -y[0] / r3;
        dydt[3] = -y[1] / r3;
    }
}
