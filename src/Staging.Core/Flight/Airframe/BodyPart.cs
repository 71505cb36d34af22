using UnitsNet;

namespace Staging.Core.Flight;

/// <summary>A tube, or a transition between two diameters (a boat-tail where it narrows).</summary>
public sealed record BodyPart
{
    /// <summary>Length along the axis [m], 0.1 mm to 50 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 1e-4, 50); }

    /// <summary>Diameter at the fore end [m], 1 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ForeDiameter { get; init => field = Guard.In(value, 1e-3, 2); }

    /// <summary>Diameter at the aft end [m], 1 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length AftDiameter { get; init => field = Guard.In(value, 1e-3, 2); }

    /// <summary>A tube of one diameter.</summary>
    /// <param name="length">Length [m], 0.1 mm to 50 m.</param>
    /// <param name="diameter">Diameter [m], 1 mm to 2 m.</param>
    /// <returns>The part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static BodyPart Tube(Length length, Length diameter) =>
        new() { Length = length, ForeDiameter = diameter, AftDiameter = diameter };
}
