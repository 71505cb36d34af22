using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>
/// A point falling under constant gravity, watched at the floor. Between floor contacts the height is a parabola, so a ball that leaves
/// the floor at speed v is back after 2 v/g (G. Galilei 1638; any textbook of mechanics).
/// </summary>
internal readonly struct BouncingBall(Crossing crossing, bool endsPhase = true) : IOdeSystem
{
    /// <summary>Standard gravity [m/s2].</summary>
    public const double G = 9.80665;

    public int Dimension => 2;

    public int EventCount => 1;

    public EventRule Rule(int index) => new(crossing, endsPhase);

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        dydt[0] = y[1];
        dydt[1] = -G;
    }

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) => values[0] = y[0];
}
