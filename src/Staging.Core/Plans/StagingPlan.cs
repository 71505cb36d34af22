using System.Collections.Immutable;
using Staging.Core.Flight;
using Staging.Core.Plans.Reading;
using UnitsNet;

namespace Staging.Core.Plans;

/// <summary>One staging plan: the stack with its gaps, and the field it flies from.</summary>
/// <remarks>
/// A stage that is lit through a gap carries a <see cref="GapIgnition"/> in its <see cref="StageIgnition.ByGap"/>.
/// Two plans that hold the same are equal.
/// </remarks>
public sealed partial record StagingPlan
{
    /// <summary>What the plan is called.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>The stack, its guide and its site.</summary>
    public required FlightPlan Flight { get; init => field = Guard.NotNull(value); }

    /// <summary>Smallest dimension of the launch site [m], 1 m to 100 km: its diameter, or its shortest side.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length SiteSize { get; init => field = Guard.In(value, 1, 100_000); }

    /// <summary>The text that it was read from.</summary>
    internal PlanOrigin Origin { get; init; } = PlanOrigin.Code;

    /// <summary>
    /// All findings: those of the flight plan and those of every gap, at the conditions of the site. Those of a plan
    /// that was read name the keys of its text, the values as written and the file.
    /// </summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check() => [.. PlanChecks.Of(this).Select(f => Origin.Told(this, f))];
}
