namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// y1' = 2 t y1 ln y2, y2' = -2 t y2 ln y1: y1 = exp(sin t^2), y2 = exp(cos t^2). A coupled, non-autonomous, non-linear system; the solution
/// is confirmed by insertion. Recalled from E. Hairer, S. P. Norsett and G. Wanner, Solving Ordinary Differential Equations I (1993), chapter II.
/// </summary>
internal readonly struct CoupledLogarithms : IUnwatchedProblem
{
    public static double Start => 0;

    public static double Stop => 2;

    public static double[] Scales => [1, 1];

    public static bool HasJacobian => true;

    public int Dimension => 2;

    public static double[] Exact(double t) => [Math.Exp(Math.Sin(t * t)), Math.Exp(Math.Cos(t * t))];

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = 2 * t * y[0] * Math.Log(y[1]);
        dydt[1] = -2 * t * y[1] * Math.Log(y[0]);
    }

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        jacobian[0] = 2 * t * Math.Log(y[1]);
        jacobian[1] = 2 * t * y[0] / y[1];
        jacobian[2] = -2 * t * y[1] / y[0];
        jacobian[3] = -2 * t * Math.Log(y[0]);
        timeSlope[0] = 2 * y[0] * Math.Log(y[1]);
        timeSlope[1] = -2 * y[1] * Math.Log(y[0]);
    }
}
