using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// The chamber of a booster motor at burn-through: hot products that leave forward through a growing opening and
/// rearward through the nozzle.
/// </summary>
public sealed record BoosterChamber
{
    /// <summary>Products of combustion: gas and particles in equilibrium.</summary>
    public required DustyGas Products { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature of the products in the chamber and of the burning fragments [K], 800 to 3500.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature FlameTemperature { get; init => field = Guard.In(value, 800, 3500); }

    /// <summary>Free volume at burn-through [m3], 0.01 cm3 to 10 litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume Volume { get; init => field = Guard.In(value, 1e-8, 0.01); }

    /// <summary>Absolute pressure at burn-through [Pa], 10 kPa to 20 MPa.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Pressure Pressure { get; init => field = Guard.In(value, 1e4, 2e7); }

    /// <summary>Diameter of the forward opening once it is fully open [m], 0.5 mm to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OpeningDiameter { get; init => field = Guard.In(value, 5e-4, 0.2); }

    /// <summary>
    /// Time in which the diameter of the opening grows, evenly, from nothing to its full size [s], 1 microsecond to 1
    /// s.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Duration OpeningTime { get; init => field = Guard.In(value, 1e-6, 1); }

    /// <summary>Discharge coefficient of the forward opening [-], 0.3 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double OpeningCoefficient { get; init => field = Guard.In(value, 0.3, 1); }

    /// <summary>Throat diameter of the nozzle [m], 0 (plugged) to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length NozzleThroatDiameter { get; init => field = Guard.In(value, 0, 0.1); }
}
