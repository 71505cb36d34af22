using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>The face of the upper motor's propellant that must be lit, seen through its nozzle.</summary>
/// <remarks>
/// Treated as a semi-infinite solid (Carslaw and Jaeger, Conduction of Heat in Solids, 1959). Neither the conductivity
/// nor the critical flux of pressed black powder is published firmly, and reported ignition temperatures depend on the
/// dwell time: these are uncertain inputs, not constants of nature.
/// </remarks>
public sealed partial record UpperGrain
{
    /// <summary>Throat diameter of the upper motor's nozzle [m], 0.5 mm to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length NozzleThroatDiameter { get; init => field = Guard.In(value, 5e-4, 0.1); }

    /// <summary>
    /// Free volume behind the nozzle plane, nozzle cone and grain recess together [m3], 1 mm3 to 100 cm3.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Volume RecessVolume { get; init => field = Guard.In(value, 1e-9, 1e-4); }

    /// <summary>Thermal conductivity of the pressed grain [W/(m K)], 0.05 to 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ThermalConductivity Conductivity { get; init => field = Guard.In(value, 0.05, 2); }

    /// <summary>Density of the pressed grain [kg/m3], 800 to 2200.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get; init => field = Guard.In(value, 800, 2200); }

    /// <summary>Heat capacity of the grain [J/(kg K)], 300 to 3000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy HeatCapacity { get; init => field = Guard.In(value, 300, 3000); }

    /// <summary>Surface temperature at which the grain counts as lit [K], 450 to 1200.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature IgnitionTemperature { get; init => field = Guard.In(value, 450, 1200); }

    /// <summary>Temperature of the grain before the gas arrives [K], 220 to 350.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature InitialTemperature { get; init => field = Guard.In(value, 220, 350); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Thermal effusivity sqrt(k rho c) [W s^0.5/(m2 K)]: the only way the three enter the surface temperature.
    /// </summary>
    internal double Effusivity =>
        Math.Sqrt(Conductivity.WattsPerMeterKelvin * Density.KilogramsPerCubicMeter * HeatCapacity.JoulesPerKilogramKelvin);
}
