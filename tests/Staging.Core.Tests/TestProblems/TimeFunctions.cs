using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>y' = 1 with event functions of time and state given by the test.</summary>
internal sealed class TimeFunctions(params (Func<double, double> Function, EventRule Rule)[] watched) : IOdeSystem
{
    public int Dimension => 1;

    public int EventCount => watched.Length;

    /// <summary>Times at which something was evaluated.</summary>
    public List<double> Times { get; } = [];

    public EventRule Rule(int index) => watched[index].Rule;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dydt)
    {
        Times.Add(t);
        dydt[0] = 1;
    }

    public void EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
        Times.Add(t);
        for (int i = 0; i < values.Length; i++)
            values[i] = watched[i].Function(t);
    }
}
