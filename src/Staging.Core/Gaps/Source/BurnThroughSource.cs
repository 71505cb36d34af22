using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>
/// Hot gas from a booster motor that has burnt through: its chamber opens forward while the nozzle still flows
/// rearward, and the last web of propellant breaks up and burns as fragments. A short blowdown is followed by a longer
/// afterburn.
/// </summary>
/// <remarks>
/// The fragments release <c>m(t) = M pi/(2 tau) sin(pi t/tau)</c> for <c>t</c> up to the burn time <c>tau</c>: a
/// half-sine pulse, an engineering judgement for the rise and fall of the burning surface. Nothing firmer is published.
/// </remarks>
public sealed record BurnThroughSource
{
    /// <summary>Products of combustion: gas and particles in equilibrium.</summary>
    public required DustyGas Products { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature of the products in the chamber and of the burning fragments [K], 800 to 3500.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature FlameTemperature { get; init => field = Guard.In(value, 800, 3500); }

    /// <summary>Free volume of the chamber at burn-through [m3], 0.01 cm3 to 10 litres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume ChamberVolume { get; init => field = Guard.In(value, 1e-8, 0.01); }

    /// <summary>Absolute chamber pressure at burn-through [Pa], 10 kPa to 20 MPa.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Pressure ChamberPressure { get; init => field = Guard.In(value, 1e4, 2e7); }

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

    /// <summary>Throat diameter of the booster's nozzle [m], 0 (plugged) to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length NozzleThroatDiameter { get; init => field = Guard.In(value, 0, 0.1); }

    /// <summary>Mass of propellant that burns as fragments after burn-through [kg], 0 to 100 g.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass FragmentMass { get; init => field = Guard.In(value, 0, 0.1); }

    /// <summary>Time over which the fragments burn [s], 0.1 ms to 10 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Duration FragmentBurnTime { get; init => field = Guard.In(value, 1e-4, 10); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>The chamber without its fragments.</summary>
    public BoosterChamber Chamber => new()
    {
        Products = Products,
        FlameTemperature = FlameTemperature,
        Volume = ChamberVolume,
        Pressure = ChamberPressure,
        OpeningDiameter = OpeningDiameter,
        OpeningTime = OpeningTime,
        OpeningCoefficient = OpeningCoefficient,
        NozzleThroatDiameter = NozzleThroatDiameter,
    };
}
