namespace Staging.Core.Validation;

/// <summary>
/// The oscillator of B. van der Pol in the stiff scaling y1' = y2, y2' = ((1 - y1^2) y2 - y1)/1e-6 from (2, 0): E. Hairer and G. Wanner,
/// Solving Ordinary Differential Equations II, 2nd ed. (1996), section IV.10.
/// </summary>
internal readonly struct VanDerPolOscillator : IPublishedProblem
{
    public int Dimension => 2;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1];
        dydt[1] = ((1 - y[0] * y[0]) * y[1] - y[0]) / 1e-6;
    }
}
