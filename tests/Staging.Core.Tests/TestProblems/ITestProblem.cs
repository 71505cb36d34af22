using Staging.Core.Solving;

namespace Staging.Core.Tests.TestProblems;

/// <summary>A right-hand side whose solution is known, over a stated interval.</summary>
internal interface ITestProblem : IOdeSystem
{
    static abstract double Start { get; }

    static abstract double Stop { get; }

    /// <summary>Natural size of each state.</summary>
    static abstract double[] Scales { get; }

    /// <summary>The exact state at a time.</summary>
    static abstract double[] Exact(double t);
}

/// <summary>A test problem on which nothing is watched.</summary>
internal interface IUnwatchedProblem : ITestProblem
{
    int IOdeSystem.EventCount => 0;

    EventRule IOdeSystem.Rule(int index) => throw new ArgumentOutOfRangeException(nameof(index));

    void IOdeSystem.EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
    }
}
