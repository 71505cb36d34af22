namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// y' = -rate (y - cos t) - sin t, y(0) = 1: y = cos t whatever the rate. A. Prothero and A. Robinson, "On the stability and accuracy of
/// one-step methods for solving stiff systems of ordinary differential equations", Math. Comp. 28 (1974) 145-162. Stiff and non-autonomous.
/// </summary>
internal static class ProtheroRobinson
{
    /// <summary>The rate 10 1/s: not stiff at the steps used.</summary>
    internal readonly struct Mild : IUnwatchedProblem
    {
        public static double Start => 0;

        public static double Stop => 3;

        public static double[] Scales => [1];

        public static bool HasJacobian => true;

        public int Dimension => 1;

        public static double[] Exact(double t) => [Math.Cos(t)];

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = Slope(10, t, y[0]);

        public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope) =>
            Fill(10, t, jacobian, timeSlope);
    }

    /// <summary>The rate 1e6 1/s: stiff at every step used.</summary>
    internal readonly struct Stiff : IUnwatchedProblem
    {
        public static double Start => 0;

        public static double Stop => 3;

        public static double[] Scales => [1];

        public static bool HasJacobian => true;

        public int Dimension => 1;

        public static double[] Exact(double t) => [Math.Cos(t)];

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = Slope(1e6, t, y[0]);

        public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope) =>
            Fill(1e6, t, jacobian, timeSlope);
    }

    private static double Slope(double rate, double t, double y) => -rate * (y - Math.Cos(t)) - Math.Sin(t);

    private static void Fill(double rate, double t, Span<double> jacobian, Span<double> timeSlope)
    {
        jacobian[0] = -rate;
        timeSlope[0] = -rate * Math.Sin(t) - Math.Cos(t);
    }
}
