using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>The nose of an airframe.</summary>
public sealed record Nose
{
    /// <summary>Its outline.</summary>
    public required NoseShape Shape { get; init => field = Guard.Defined(value); }

    /// <summary>Length from the tip to the body tube [m], 1 mm to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 1e-3, 10); }

    /// <summary>Diameter at its base, where it meets the body tube [m], 1 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Diameter { get; init => field = Guard.In(value, 1e-3, 2); }
}
