using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The two bodies that the gap pressure pushes apart, and what presses them together.</summary>
public sealed record SeparatingBodies
{
    /// <summary>Least and greatest mass of a body that is accepted [kg].</summary>
    internal const double LeastMass = 1e-3, MostMass = 200_000;

    /// <summary>Greatest relative acceleration that is accepted, either way [m/s2].</summary>
    internal const double MostAcceleration = 1e5;

    /// <summary>Mass of everything ahead of the joint [kg], 1 g to 200 t.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass MassAhead { get; init => field = Guard.In(value, LeastMass, MostMass); }

    /// <summary>Mass of everything behind the joint [kg], 1 g to 200 t.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass MassBehind { get; init => field = Guard.In(value, LeastMass, MostMass); }

    /// <summary>
    /// Relative acceleration that presses the bodies together [m/s2], -100 000 to 100 000:
    /// drag ahead over mass ahead, plus (thrust left minus drag behind) over mass behind. Gravity cancels. Negative
    /// pulls apart.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Acceleration ClosingAcceleration
    {
        get;
        init
        {
            Guard.In(value.MetersPerSecondSquared, -MostAcceleration, MostAcceleration, "m/s2", nameof(ClosingAcceleration));
            field = value;
        }
    }
}
