using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The tube that guides the hot gas from the booster motor's forward end (station 0) to the upper motor's nozzle plane.</summary>
/// <remarks>The tube and its holes belong to the forward body; the joint that slides is at the booster's end.</remarks>
public sealed record GuideTube
{
    /// <summary>Inner diameter [m], 2 mm to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 0.002, 0.2); }

    /// <summary>Length from the booster motor's forward end to the upper motor's nozzle plane [m], 1 mm to 5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 0.001, 5); }

    /// <summary>Cross-section of the bore.</summary>
    public Area CrossSection => Area.FromSquareMeters(Math.PI / 4 * Bore.Meters * Bore.Meters);

    /// <summary>Volume of the bore between the motors.</summary>
    public Volume Volume => UnitsNet.Volume.FromCubicMeters(CrossSection.SquareMeters * Length.Meters);
}
