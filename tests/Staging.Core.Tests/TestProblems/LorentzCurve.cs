namespace Staging.Core.Tests.TestProblems;

/// <summary>y' = -2 t y^2, y(-1) = 1/2: y = 1/(1 + t^2), by separation of variables. Non-autonomous and not linear.</summary>
internal readonly struct LorentzCurve : IUnwatchedProblem
{
    public static double Start => -1;

    public static double Stop => 2;

    public static double[] Scales => [1];

    public static bool HasJacobian => true;

    public int Dimension => 1;

    public static double[] Exact(double t) => [1 / (1 + t * t)];

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = -2 * t * y[0] * y[0];

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        jacobian[0] = -4 * t * y[0];
        timeSlope[0] = -2 * y[0] * y[0];
    }
}
