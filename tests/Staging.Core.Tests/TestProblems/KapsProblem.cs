namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// y1' = -(1/e + 2) y1 + y2^2/e, y2' = y1 - y2 - y2^2, y(0) = (1, 1): y1 = exp(-2 t), y2 = exp(-t) for every e; here e = 1e-6.
/// P. Kaps, "Rosenbrock-type methods", in Numerische Behandlung steifer Differentialgleichungen, RWTH Aachen (1981); quoted by many. Stiff,
/// non-linear, autonomous.
/// </summary>
internal readonly struct KapsProblem : IUnwatchedProblem
{
    private const double Rate = 1e6;

    public static double Start => 0;

    public static double Stop => 2;

    public static double[] Scales => [1, 1];

    public static bool HasJacobian => true;

    public int Dimension => 2;

    public static double[] Exact(double t) => [Math.Exp(-2 * t), Math.Exp(-t)];

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = -(Rate + 2) * y[0] + Rate * y[1] * y[1];
        dydt[1] = y[0] - y[1] - y[1] * y[1];
    }

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        jacobian[0] = -(Rate + 2);
        jacobian[1] = 2 * Rate * y[1];
        jacobian[2] = 1;
        jacobian[3] = -1 - 2 * y[1];
        timeSlope.Clear();
    }
}
