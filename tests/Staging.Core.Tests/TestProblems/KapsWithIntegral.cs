namespace Staging.Core.Tests.TestProblems;

/// <summary>The problem of Kaps with the integral of y1 before it, which nothing depends on: (1 - exp(-2 t))/2.</summary>
/// <param name="integrals">Whether it is told apart: 1, or 0 to solve for it like the others.</param>
internal readonly struct KapsWithIntegral(int integrals) : IUnwatchedProblem
{
    public static double Start => 0;

    public static double Stop => 2;

    public static double[] Scales => [1, 1, 1];

    public static bool HasJacobian => true;

    public int Dimension => 3;

    public int Integrals => integrals;

    public static double[] Exact(double t) => [0.5 * (1 - Math.Exp(-2 * t)), .. KapsProblem.Exact(t)];

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1];
        new KapsProblem().Derivative(t, y[1..], dydt[1..]);
    }

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        Span<double> kaps = stackalloc double[4];
        new KapsProblem().Jacobian(t, y[1..], slope[1..], kaps, timeSlope[1..]);
        jacobian.Clear();
        jacobian[1] = 1;
        kaps[..2].CopyTo(jacobian[4..]);
        kaps[2..].CopyTo(jacobian[7..]);
        timeSlope[0] = 0;
    }
}
