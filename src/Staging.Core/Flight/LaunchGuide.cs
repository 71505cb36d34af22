using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>
/// The rod or rail that holds the direction until the fins do. The flight continues in its direction.
/// </summary>
public sealed record LaunchGuide
{
    /// <summary>Length of travel along the guide [m], 1 cm to 100 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 0.01, 100); }

    /// <summary>Angle above the horizontal [deg], 30 to 90; 90 is straight up.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle Elevation { get; init => field = Guard.In(value, 30, 90); }

    /// <summary>Sliding friction on the guide over the load that a leaning guide carries [-], 0 to 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FrictionCoefficient { get; init => field = Guard.In(value, 0, 2); }

    /// <summary>Friction that does not depend on the load [N], 0 to 1000 N: tight lugs, clips of the igniter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Force ConstantFriction { get; init => field = Guard.In(value, 0, 1000); }

    /// <summary>A straight-up guide without friction.</summary>
    /// <param name="length">Length of travel [m], 1 cm to 100 m.</param>
    /// <returns>The guide.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static LaunchGuide Vertical(Length length) => new()
    {
        Length = length,
        Elevation = Angle.FromDegrees(90),
        FrictionCoefficient = 0,
        ConstantFriction = Force.FromNewtons(0),
    };
}
