using Staging.Core.Solving;

namespace Staging.Core.Validation;

/// <summary>Problems of the literature on which nothing is watched.</summary>
internal interface IPublishedProblem : IOdeSystem
{
    int IOdeSystem.EventCount => 0;

    EventRule IOdeSystem.Rule(int index) => throw new ArgumentOutOfRangeException(nameof(index));

    void IOdeSystem.EventValues(double t, ReadOnlySpan<double> y, Span<double> values)
    {
    }
}
