using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using UnitsNet.Units;

namespace Staging.Core.Tests.Properties;

/// <summary>Random quantities within a range, in any of their units, and the names and sources that go with them.</summary>
internal static class QuantityCases
{
    public static readonly Gen<string> Names = Gen.Elements(
        "booster", "sustainer", "a \"quoted\" name", "back\\slash", "two  blanks, a colon: and more", "18 mm < 24 mm & more", "h\u00f6her", "\u6f22\u5b57", "\ud83d\ude80 up", "null", "$.name");

    public static readonly Gen<Provenance> Sources =
        from source in Names
        from locator in Gen.OneOf(Gen.Constant<string?>(null), Names.Select(n => (string?)n))
        from how in Gen.Elements(Enum.GetValues<Evidence>())
        select new Provenance { Source = source, Locator = locator, How = how };

    /// <summary>Numbers well inside a range, so that a change of unit does not round them out of it.</summary>
    public static Gen<double> Number(double low, double high) =>
        Gen.Choose(1, int.MaxValue - 1).Select(n => low + (high - low) * (1e-6 + (1 - 2e-6) * n / int.MaxValue));

    public static Gen<Length> Lengths(double low, double high) =>
        In(low, high, x => Length.FromMeters(x), (x, u) => x.ToUnit(u), LengthUnit.Meter, LengthUnit.Millimeter, LengthUnit.Centimeter, LengthUnit.Kilometer, LengthUnit.Inch, LengthUnit.Foot);

    public static Gen<Area> Areas(double low, double high) =>
        In(low, high, x => Area.FromSquareMeters(x), (x, u) => x.ToUnit(u), AreaUnit.SquareMeter, AreaUnit.SquareMillimeter, AreaUnit.SquareCentimeter, AreaUnit.SquareInch);

    public static Gen<Volume> Volumes(double low, double high) =>
        In(low, high, x => Volume.FromCubicMeters(x), (x, u) => x.ToUnit(u), VolumeUnit.CubicMeter, VolumeUnit.CubicMillimeter, VolumeUnit.CubicCentimeter, VolumeUnit.Liter);

    public static Gen<Mass> Masses(double low, double high) =>
        In(low, high, x => Mass.FromKilograms(x), (x, u) => x.ToUnit(u), MassUnit.Kilogram, MassUnit.Gram, MassUnit.Milligram, MassUnit.Ounce, MassUnit.Pound);

    public static Gen<Duration> Durations(double low, double high) =>
        In(low, high, x => Duration.FromSeconds(x), (x, u) => x.ToUnit(u), DurationUnit.Second, DurationUnit.Millisecond, DurationUnit.Microsecond, DurationUnit.Nanosecond);

    public static Gen<Pressure> Pressures(double low, double high) =>
        In(low, high, x => Pressure.FromPascals(x), (x, u) => x.ToUnit(u), PressureUnit.Pascal, PressureUnit.Kilopascal, PressureUnit.Bar, PressureUnit.PoundForcePerSquareInch);

    public static Gen<Temperature> Temperatures(double low, double high) =>
        In(low, high, x => Temperature.FromKelvins(x), (x, u) => x.ToUnit(u), TemperatureUnit.Kelvin, TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeFahrenheit);

    public static Gen<SpecificEntropy> SpecificHeat(double low, double high) =>
        In(low, high, x => SpecificEntropy.FromJoulesPerKilogramKelvin(x), (x, u) => x.ToUnit(u), SpecificEntropyUnit.JoulePerKilogramKelvin, SpecificEntropyUnit.KilojoulePerKilogramKelvin);

    private static Gen<T> In<T, TUnit>(double low, double high, Func<double, T> make, Func<T, TUnit, T> convert, params TUnit[] units) =>
        from x in Number(low, high)
        from unit in Gen.Elements(units)
        select convert(make(x), unit);
}
