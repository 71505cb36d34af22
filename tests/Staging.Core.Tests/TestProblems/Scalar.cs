using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>y' = f(t, y) for one state, as the test gives it.</summary>
internal sealed class Scalar(Func<double, double, double> slope) : IOdeSystem
{
    public int Dimension => 1;

    public int EventCount => 0;

    /// <summary>Times at which the slope was evaluated.</summary>
    public List<double> Times { get; } = [];

    public EventRule Rule(int index) => default;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        Times.Add(t);
        dydt[0] = slope(t, y[0]);
    }

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
    }
}
