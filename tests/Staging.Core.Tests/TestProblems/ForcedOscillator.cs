namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// x'' + x = cos(w t), x(0) = 1, x'(0) = 0, w = 1/2: x = a cos(w t) + (1 - a) cos t with a = 1/(1 - w^2). The undamped oscillator under a
/// harmonic force of every textbook of mechanics (L. D. Landau and E. M. Lifshitz, Mechanics, section 22). Two states, non-autonomous.
/// </summary>
internal readonly struct ForcedOscillator : IUnwatchedProblem
{
    private const double W = 0.5;

    public static double Start => 0;

    public static double Stop => 6;

    public static double[] Scales => [1, 1];

    public static bool HasJacobian => true;

    public int Dimension => 2;

    public static double[] Exact(double t)
    {
        double a = 1 / (1 - W * W);
        return [a * Math.Cos(W * t) + (1 - a) * Math.Cos(t), -a * W * Math.Sin(W * t) - (1 - a) * Math.Sin(t)];
    }

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1];
        dydt[1] = Math.Cos(W * t) - y[0];
    }

    public void Jacobian(double t, ReadOnlySpan<double> y, ReadOnlySpan<double> slope, Span<double> jacobian, Span<double> timeSlope)
    {
        ReadOnlySpan<double> j = [0, 1, -1, 0];
        j.CopyTo(jacobian);
        timeSlope[0] = 0;
        timeSlope[1] = -W * Math.Sin(W * t);
    }
}
