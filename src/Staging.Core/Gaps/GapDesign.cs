using Staging.Core.Discharge;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// What the builder makes, and what is known of the two motors: tube, vents, joint, source, grain. It holds no default
/// for any physics.
/// </summary>
/// <remarks>Immutable; may be read from any thread. A changed copy is <c>design with { ... }</c>.</remarks>
public sealed record GapDesign
{
    /// <summary>The tube between the motors.</summary>
    public required GuideTube Tube { get; init => field = Guard.NotNull(value); }

    /// <summary>Holes out of the tube; an empty list is a closed gap.</summary>
    public required EquatableArray<Vent> Vents { get; init; }

    /// <summary>
    /// Volumes round the tube that vents may lead into, at most 16; empty, the default, where there is none.
    /// </summary>
    /// <exception cref="ArgumentException">More than 16.</exception>
    public EquatableArray<Jacket> Jackets
    {
        get;
        init => field = Guard.AtMost(value, 16);
    } = [];

    /// <summary>How all holes discharge, those of the jackets too.</summary>
    public required IDischargeLaw DischargeLaw { get; init => field = Guard.NotNull(value); }

    /// <summary>What comes out of the booster.</summary>
    public required GapSource Source { get; init => field = Guard.NotNull(value); }

    /// <summary>What holds the stages together.</summary>
    public required StageJoint Joint { get; init => field = Guard.NotNull(value); }

    /// <summary>The propellant to be lit.</summary>
    public required UpperGrain Grain { get; init => field = Guard.NotNull(value); }

    /// <summary>Mixing and heat transfer.</summary>
    public required MixingAndHeat MixingAndHeat { get; init => field = Guard.NotNull(value); }

    /// <summary>Area of all vents of the tube together.</summary>
    public Area TotalVentArea => Area.FromSquareMeters(Vents.Sum(v => v.Holes.TotalArea.SquareMeters));
}
