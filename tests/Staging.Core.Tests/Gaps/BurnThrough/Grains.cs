using Staging.Core.Gaps;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Gaps.BurnThrough;

/// <summary>Invented end burners for tests. They stand for nothing real.</summary>
internal static class Grains
{
    /// <summary>A grain of 12 mm whose whole web breaks off.</summary>
    public static GapSource.EndBurner Whole { get; } = new()
    {
        Products = BlackPowderProducts.Nominal,
        FlameTemperature = Temperature.FromKelvins(1890),
        GrainDiameter = Length.FromMillimeters(12),
        BurntLength = Length.FromMillimeters(45),
        NozzleThroatDiameter = Length.FromMillimeters(2.8),
        Density = Density.FromKilogramsPerCubicMeter(1700),
        Rate = BurnRateLaw.Shidlovskiy,
        Strength = Pressure.FromMegapascals(4),
        FreshFaceDelay = Duration.FromMilliseconds(20),
        OpeningCoefficient = 0.8,
        Provenance = Bench.Invented,
    };

    /// <summary>A short grain of the same bore, of which a cap breaks out.</summary>
    public static GapSource.EndBurner Capped { get; } = Whole with { BurntLength = Length.FromMillimeters(12) };

    /// <summary>A gap whose joint never moves.</summary>
    public static GapProblem Held { get; } = Of(Whole);

    /// <summary>The gap of the bench with a source, its joint far too firm to move.</summary>
    public static GapProblem Of(GapSource source) => Bench.Gap.With(d => d with { Source = source, Joint = Bench.Joint(2000) });

    /// <summary>Motors that burn at one speed whatever the pressure.</summary>
    public static GapSource.EndBurner Steady(this GapSource.EndBurner motor, double millimetresPerSecond = 20) => motor with
    {
        Rate = new BurnRateLaw { RateAtOneAtmosphere = Speed.FromMillimetersPerSecond(millimetresPerSecond), PressureExponent = 0, Provenance = Bench.Invented },
    };

    /// <summary>The same motor with another speed of its pieces [m/s].</summary>
    public static GapSource.EndBurner At(this GapSource.EndBurner motor, double speed) => motor with { PieceSpeed = Speed.FromMetersPerSecond(speed) };

    /// <summary>The same motor with fresh faces that catch after so many milliseconds.</summary>
    public static GapSource.EndBurner Fresh(this GapSource.EndBurner motor, double milliseconds) =>
        motor with { FreshFaceDelay = Duration.FromMilliseconds(milliseconds) };
}
