using UnitsNet;

namespace Staging.Core.Discharge;

/// <summary>Round holes of one size through one wall.</summary>
public sealed record VentHoles
{
    /// <summary>Diameter of one hole [m], 0.1 mm to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Diameter { get; init => field = Guard.In(value, 1e-4, 0.1); }

    /// <summary>Wall thickness [m], 0.01 mm to 50 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness { get; init => field = Guard.In(value, 1e-5, 0.05); }

    /// <summary>Number of holes, 1 to 1000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Count { get; init => field = Guard.In(value, 1, 1000); }

    /// <summary>Area of all holes together.</summary>
    public Area TotalArea => Area.FromSquareMeters(Count * Math.PI / 4 * Diameter.Meters * Diameter.Meters);
}
