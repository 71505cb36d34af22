namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// y' = y cos t, y(0) = 1: y = exp(sin t). Problem A3 of T. E. Hull, W. H. Enright, B. M. Fellen and A. E. Sedgwick, "Comparing numerical
/// methods for ordinary differential equations", SIAM J. Numer. Anal. 9 (1972) 603-637. Non-autonomous.
/// </summary>
internal readonly struct CosineGrowth : IUnwatchedProblem
{
    public static double Start => 0;

    public static double Stop => 5;

    public static double[] Scales => [1];

    public static bool HasJacobian => true;

    public int Dimension => 1;

    public static double[] Exact(double t) => [Math.Exp(Math.Sin(t))];

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = y[0] * Math.Cos(t);

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        jacobian[0] = Math.Cos(t);
        timeSlope[0] = -y[0] * Math.Sin(t);
    }
}
