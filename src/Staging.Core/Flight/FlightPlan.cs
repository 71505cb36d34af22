using System.Collections.Immutable;
using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>A stack on its guide, at a site. <see cref="Fly"/> flies it.</summary>
public sealed partial record FlightPlan
{
    /// <summary>The stages, lowest first; one or more.</summary>
    public required EquatableArray<Stage> Stages { get; init; }

    /// <summary>
    /// Mass carried by the uppermost stage and not counted in it [kg], 0 to 100 t. The default is none.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass Payload { get; init => field = Guard.In(value, 0, 100_000); }

    /// <summary>The rod or rail.</summary>
    public required LaunchGuide Guide { get; init => field = Guard.NotNull(value); }

    /// <summary>Air, elevation, wind and gravity.</summary>
    public required LaunchSite Site { get; init => field = Guard.NotNull(value); }

    /// <summary>Mass of the whole stack on the guide [kg].</summary>
    public Mass LiftOffMass => Mass.FromKilograms(Payload.Kilograms + Stages.Sum(s => s.LoadedMass.Kilograms));

    /// <summary>Checks that the plan is consistent.</summary>
    /// <returns>All findings, errors and others; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check() => FlightPlanCheck.Run(this);
}
