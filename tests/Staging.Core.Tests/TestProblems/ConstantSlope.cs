using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>y' = constant.</summary>
internal readonly struct ConstantSlope(double slope) : IOdeSystem
{
    public int Dimension => 1;

    public int EventCount => 0;

    public EventRule Rule(int index) => default;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = slope;

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
    }
}
