using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// A solid motor. Its mass falls in proportion to the impulse delivered, so the propellant is gone when the curve ends.
/// </summary>
public sealed record Motor
{
    /// <summary>Its name in the results.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>
    /// Thrust against time from ignition, as measured near sea level; it is not corrected for air pressure.
    /// </summary>
    public required ThrustHistory Thrust { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Propellant burnt along the thrust history [kg], 0 to 10000 kg. Zero is thrust without loss of mass.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass PropellantMass { get; init => field = Guard.In(value, 0, 10_000); }

    /// <summary>Mass ready to fly, propellant included [kg], 0 to 20000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass LoadedMass { get; init => field = Guard.In(value, 0, 20_000); }

    /// <summary>The behaviour of the forward end when the propellant is used up.</summary>
    public required MotorForwardEnd ForwardEnd { get; init => field = Guard.NotNull(value); }

    /// <summary>Outside diameter of the case [m], 1 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Diameter { get; init => field = Guard.In(value, 1e-3, 2); }

    /// <summary>Length of the case [m], 1 mm to 20 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 1e-3, 20); }

    /// <summary>The source of curve and masses.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Mean exhaust speed that the total impulse and the propellant imply [m/s]; null without propellant.
    /// </summary>
    public Speed? EffectiveExhaustSpeed => PropellantMass.Kilograms > 0
        ? Speed.FromMetersPerSecond(Thrust.TotalImpulse.NewtonSeconds / PropellantMass.Kilograms)
        : null;
}
