namespace Staging.Core.Tests.TestProblems;

/// <summary>The same problem, announcing no Jacobian: implicit methods must take differences.</summary>
internal readonly struct WithoutJacobian<TProblem> : IUnwatchedProblem
    where TProblem : struct, ITestProblem
{
    public static double Start => TProblem.Start;

    public static double Stop => TProblem.Stop;

    public static double[] Scales => TProblem.Scales;

    public int Dimension => default(TProblem).Dimension;

    public static double[] Exact(double t) => TProblem.Exact(t);

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => default(TProblem).Derivative(t, y, dydt);
}
