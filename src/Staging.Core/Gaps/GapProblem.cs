using System.Collections.Immutable;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>Everything a gap run needs. It says nothing about how it is solved, and holds no default for any physics.</summary>
/// <remarks>Immutable; may be read from any thread. A changed copy is <c>problem with { ... }</c>.</remarks>
public sealed record GapProblem
{
    /// <summary>The tube between the motors.</summary>
    public required GuideTube Tube { get; init => field = Guard.NotNull(value); }

    /// <summary>Holes to the outside; an empty list is a closed gap.</summary>
    public required ImmutableArray<Vent> Vents { get; init => field = Guard.Set(value); }

    /// <summary>How the holes discharge.</summary>
    public required IDischargeLaw DischargeLaw { get; init => field = Guard.NotNull(value); }

    /// <summary>What comes out of the booster.</summary>
    public required BurnThroughSource Source { get; init => field = Guard.NotNull(value); }

    /// <summary>What holds the stages together.</summary>
    public required FrictionJoint Joint { get; init => field = Guard.NotNull(value); }

    /// <summary>The bodies ahead of and behind the joint.</summary>
    public required SeparatingBodies Bodies { get; init => field = Guard.NotNull(value); }

    /// <summary>The propellant to be lit.</summary>
    public required UpperGrain Grain { get; init => field = Guard.NotNull(value); }

    /// <summary>Mixing and heat transfer.</summary>
    public required GapClosures Closures { get; init => field = Guard.NotNull(value); }

    /// <summary>Air outside the holes; the gap starts filled with it.</summary>
    public required GasState Surroundings { get; init => field = Guard.NotNull(value); }

    /// <summary>How long after burn-through the gap is watched [s], 0.1 ms to 10 s. The default is 0.2 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Duration Horizon { get; init => field = Guard.In(value, 1e-4, 10); } = Duration.FromMilliseconds(200);

    /// <summary>Area of all vents together.</summary>
    public Area TotalVentArea => Area.FromSquareMeters(Vents.Sum(v => v.Holes.TotalArea.SquareMeters));

    /// <summary>All findings about the model, from holes outside the tube to laws used outside their range.</summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check() => GapChecks.Of(this);
}
