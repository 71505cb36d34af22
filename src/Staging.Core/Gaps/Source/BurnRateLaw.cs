using UnitsNet;

namespace Staging.Core.Gaps;

/// <summary>How fast a burning face recedes: r = a p^n, with a given as the rate at one atmosphere.</summary>
/// <remarks>
/// Published laws for black powder disagree by 42 % at one atmosphere: treat both numbers as uncertain.
/// </remarks>
public sealed record BurnRateLaw
{
    internal const double ReferencePressure_Pa = 101325;

    /// <summary>Pressure up to which a law is asked [Pa].</summary>
    internal const double MostPressure_Pa = 1e9;

    /// <summary>Rate at 101325 Pa [m/s], 0.1 mm/s to 1 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed RateAtOneAtmosphere { get; init => field = Guard.In(value, 1e-4, 1); }

    /// <summary>Exponent n [-], 0 to 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double PressureExponent { get; init => field = Guard.In(value, 0, 1); }

    /// <summary>Where these numbers come from.</summary>
    public required Provenance Provenance { get; init => field = Guard.NotNull(value); }

    /// <summary>The law ascribed to Shidlovskiy, 2 to 30 atm: 12.1 mm/s at one atmosphere, n = 0.24.</summary>
    public static BurnRateLaw Shidlovskiy { get; } = new()
    {
        RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(12.1),
        PressureExponent = 0.24,
        Provenance = new Provenance
        {
            Source = "A. A. Shidlovskiy, as quoted in the pyrotechnic literature; r = 1.21 p^0.24 cm/s, p in atm, 2 to 30 atm",
            How = Evidence.FromMemory,
        },
    };

    /// <summary>The law of Belyaev and Maznev (1960): 17.2 mm/s at one atmosphere, n = 0.164.</summary>
    public static BurnRateLaw BelyaevMaznev { get; } = new()
    {
        RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(17.2),
        PressureExponent = 0.164,
        Provenance = new Provenance
        {
            Source = "A. F. Belyaev and S. F. Maznev, Dokl. Akad. Nauk SSSR 131 (1960) 887, as quoted in ballistics reports; r = 1.72 "
                + "p^0.164 cm/s, p in atm",
            How = Evidence.FromMemory,
        },
    };

    /// <summary>The rate at a pressure.</summary>
    /// <param name="pressure">Absolute pressure [Pa], 0 to 1 GPa.</param>
    /// <returns>The rate [m/s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Speed At(Pressure pressure)
    {
        Guard.In(pressure, 0, MostPressure_Pa, nameof(pressure));
        return RateAtOneAtmosphere * Math.Pow(pressure.Pascals / ReferencePressure_Pa, PressureExponent);
    }
}
