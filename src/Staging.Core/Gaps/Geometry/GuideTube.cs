using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// The tube that guides the hot gas from the booster motor's forward end (station 0) to the upper motor's nozzle plane.
/// </summary>
/// <remarks>The tube and its holes belong to the forward body; the joint that slides is at the booster's end.</remarks>
public sealed record GuideTube
{
    /// <summary>Inner diameter [m], 2 mm to 200 mm; up to the first of the <see cref="Steps"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Bore { get; init => field = Guard.In(value, 0.002, 0.2); }

    /// <summary>
    /// Length from the booster motor's forward end to the upper motor's nozzle plane [m], 1 mm to 5 m.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Length { get; init => field = Guard.In(value, 0.001, 5); }

    /// <summary>
    /// Changes of bore, from the booster's end upwards; empty, the default, for a tube of one bore. At most 100.
    /// </summary>
    /// <exception cref="ArgumentException">More than 100.</exception>
    public EquatableArray<BoreStep> Steps
    {
        get;
        init => field = Guard.AtMost(value, 100);
    } = [];

    /// <summary>Cross-section of the bore at station 0.</summary>
    public Area CrossSection => Area.FromSquareMeters(Math.PI / 4 * Bore.Meters * Bore.Meters);

    /// <summary>Volume of the bore between the motors.</summary>
    public Volume Volume => UnitsNet.Volume.FromCubicMeters(Profile.VolumeTo(Length.Meters));

    /// <summary>Bore just below a station.</summary>
    /// <param name="station">Distance from the booster motor's forward end [m], 0 to 5 m.</param>
    /// <returns>Inner diameter [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length BoreBelow(Length station) => Length.FromMeters(Profile.BoreBelow(Guard.In(station, 0, 5, nameof(station)).Meters));

    /// <summary>The bore as plain numbers.</summary>
    internal BoreProfile Profile => new([0, .. Steps.Select(s => s.Station.Meters)], [Bore.Meters, .. Steps.Select(s => s.Bore.Meters)]);
}
