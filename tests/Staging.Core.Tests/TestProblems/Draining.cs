using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>A stock that drains at one rate and stops a hundredth above empty: y' = -3000, or 0 from y = 0.01 down.</summary>
/// <param name="isHeld">Whether it is told that the stock is never less than nothing.</param>
internal readonly struct Draining(bool isHeld) : IOdeSystem
{
    public static bool HasDomain => true;

    public int Dimension => 1;

    public int EventCount => 0;

    public EventRule Rule(int index) => throw new NotSupportedException();

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt) => dydt[0] = y[0] > 0.01 ? -3000 : 0;

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values) => throw new NotSupportedException();

    public bool Holds(ReadOnlySpan<double> y) => !isHeld || y[0] > 0;
}
