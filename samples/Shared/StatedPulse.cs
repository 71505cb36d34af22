using Staging.Core;
using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Samples;

/// <summary>
/// An invented booster whose gas is stated and not derived from its grain: a chamber of 6.2 cm3 at 800 kPa opens within
/// 1 ms, and 0.19 g of fragments burn as a half-sine pulse over 25 ms at the booster.
/// </summary>
internal static class StatedPulse
{
    public static GapSource.Booster Booster { get; } = new()
    {
        Products = BlackPowderProducts.Nominal,
        FlameTemperature = BlackPowderProducts.NominalTemperature,
        ChamberVolume = Volume.FromCubicCentimeters(6.2),
        ChamberPressure = Pressure.FromKilopascals(800),
        OpeningDiameter = Length.FromMillimeters(10),
        OpeningTime = Duration.FromMilliseconds(1),
        OpeningCoefficient = 0.8,
        NozzleThroatDiameter = Length.FromMillimeters(3.5),
        Web = new WebBurn.OverTime { Mass = Mass.FromGrams(0.19), Time = Duration.FromMilliseconds(25) },
        Provenance = new Provenance { Source = "Invented; mass, pressure and time stated", How = Evidence.Judgement },
    };
}
