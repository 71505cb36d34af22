using UnitsNet;

namespace Staging.Core.Gases;

/// <summary>A calorically perfect gas: p = rho R T with a constant ratio of heat capacities.</summary>
/// <remarks>Immutable; may be read from any thread.</remarks>
public sealed record PerfectGas
{
    /// <summary>Universal gas constant [J/(mol K)], exact since the SI of 2019.</summary>
    internal const double UniversalGasConstant = 8.31446261815324;

    /// <summary>Name for messages and tables.</summary>
    public required string Name { get; init => field = Guard.NotBlank(value); }

    /// <summary>Specific gas constant R [J/(kg K)], 10 to 5000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy GasConstant { get; init => field = Guard.In(value, 10, 5000); }

    /// <summary>Ratio of heat capacities gamma [-], 1.01 to 5/3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double HeatCapacityRatio { get; init => field = Guard.In(value, 1.01, 5.0 / 3.0); }

    /// <summary>Where the two numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>Heat capacity at constant pressure, gamma R / (gamma - 1).</summary>
    public SpecificEntropy HeatCapacityAtConstantPressure =>
        SpecificEntropy.FromJoulesPerKilogramKelvin(Constants.Cp);

    /// <summary>Heat capacity at constant volume, R / (gamma - 1).</summary>
    public SpecificEntropy HeatCapacityAtConstantVolume =>
        SpecificEntropy.FromJoulesPerKilogramKelvin(Constants.Cv);

    /// <summary>The gas as plain SI numbers.</summary>
    internal GasConstants Constants => new(GasConstant.JoulesPerKilogramKelvin, HeatCapacityRatio);

    /// <summary>Dry air: molar mass 28.9644 g/mol and gamma 1.4 of the US Standard Atmosphere 1976.</summary>
    public static PerfectGas DryAir { get; } = new()
    {
        Name = "dry air",
        GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(8314.32 / 28.9644),
        HeatCapacityRatio = 1.4,
        Provenance = new Provenance
        {
            Source = "US Standard Atmosphere, 1976: R* = 8314.32 J/(kmol K), M0 = 28.9644 kg/kmol, gamma = 1.4",
            How = Evidence.SeenInSource,
        },
    };

    /// <summary>A gas from its molar mass and its ratio of heat capacities.</summary>
    /// <param name="name">Name for messages.</param>
    /// <param name="molarMass">Molar mass [g/mol], 1.67 to 830.</param>
    /// <param name="heatCapacityRatio">gamma [-], 1.01 to 5/3.</param>
    /// <param name="source">Where the numbers come from.</param>
    /// <returns>The gas.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number outside its range.</exception>
    public static PerfectGas FromMolarMass(string name, MolarMass molarMass, double heatCapacityRatio, Provenance source) => new()
    {
        Name = name,
        GasConstant = SpecificEntropy.FromJoulesPerKilogramKelvin(UniversalGasConstant
            / Guard.In(molarMass, 0.00167, 0.83, nameof(molarMass)).KilogramsPerMole),
        HeatCapacityRatio = heatCapacityRatio,
        Provenance = source,
    };

    /// <summary>Density p / (R T).</summary>
    /// <param name="pressure">Absolute pressure [Pa], 0 to 1 GPa.</param>
    /// <param name="temperature">Absolute temperature [K], 50 to 6000.</param>
    /// <returns>The density.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument outside its range.</exception>
    public Density DensityAt(Pressure pressure, Temperature temperature) => Density.FromKilogramsPerCubicMeter(
        Guard.In(pressure, 0, 1e9, nameof(pressure)).Pascals / (Constants.R * Absolute(temperature).Kelvins));

    /// <summary>Speed of sound, the root of gamma R T.</summary>
    /// <param name="temperature">Absolute temperature [K], 50 to 6000.</param>
    /// <returns>The speed of sound.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Speed SoundSpeedAt(Temperature temperature) =>
        Speed.FromMetersPerSecond(Math.Sqrt(HeatCapacityRatio * Constants.R * Absolute(temperature).Kelvins));

    private static Temperature Absolute(Temperature temperature) => Guard.In(temperature, 50, 6000, nameof(temperature));
}
