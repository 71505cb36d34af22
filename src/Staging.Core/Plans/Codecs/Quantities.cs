using UnitsNet;
using UnitsNet.Units;

namespace Staging.Core.Plans.Codecs;

/// <summary>
/// The quantities of a plan and the units in which each may be given. The first unit is the one in which ranges are
/// kept.
/// </summary>
internal static class Quantities
{
    public static readonly QuantityCodec<Length, LengthUnit> Length = new(
        "length", (x, u) => new Length(x, u), (q, u) => q.As(u), q => q.Unit,
        [("m", LengthUnit.Meter), ("km", LengthUnit.Kilometer), ("cm", LengthUnit.Centimeter), ("mm", LengthUnit.Millimeter),
            ("um", LengthUnit.Micrometer), ("in", LengthUnit.Inch), ("ft", LengthUnit.Foot)],
        small: ("mm", 10));

    public static readonly QuantityCodec<Area, AreaUnit> Area = new(
        "area", (x, u) => new Area(x, u), (q, u) => q.As(u), q => q.Unit,
        [("m2", AreaUnit.SquareMeter), ("cm2", AreaUnit.SquareCentimeter), ("mm2", AreaUnit.SquareMillimeter),
            ("in2", AreaUnit.SquareInch)],
        small: ("mm2", 0.01));

    public static readonly QuantityCodec<Volume, VolumeUnit> Volume = new(
        "volume", (x, u) => new Volume(x, u), (q, u) => q.As(u), q => q.Unit,
        [("m3", VolumeUnit.CubicMeter), ("L", VolumeUnit.Liter), ("cm3", VolumeUnit.CubicCentimeter), ("mm3", VolumeUnit.CubicMillimeter)]);

    public static readonly QuantityCodec<Mass, MassUnit> Mass = new(
        "mass", (x, u) => new Mass(x, u), (q, u) => q.As(u), q => q.Unit,
        [("kg", MassUnit.Kilogram), ("g", MassUnit.Gram), ("mg", MassUnit.Milligram), ("lb", MassUnit.Pound), ("oz", MassUnit.Ounce)],
        small: ("g", 1e5));

    public static readonly QuantityCodec<Duration, DurationUnit> Duration = new(
        "duration", (x, u) => new Duration(x, u), (q, u) => q.As(u), q => q.Unit,
        [("s", DurationUnit.Second), ("ms", DurationUnit.Millisecond), ("us", DurationUnit.Microsecond), ("ns", DurationUnit.Nanosecond)]);

    public static readonly QuantityCodec<Force, ForceUnit> Force = new(
        "force", (x, u) => new Force(x, u), (q, u) => q.As(u), q => q.Unit,
        [("N", ForceUnit.Newton), ("kN", ForceUnit.Kilonewton), ("lbf", ForceUnit.PoundForce)]);

    public static readonly QuantityCodec<Pressure, PressureUnit> Pressure = new(
        "pressure", (x, u) => new Pressure(x, u), (q, u) => q.As(u), q => q.Unit,
        [("Pa", PressureUnit.Pascal), ("hPa", PressureUnit.Hectopascal), ("kPa", PressureUnit.Kilopascal), ("MPa", PressureUnit.Megapascal),
            ("bar", PressureUnit.Bar), ("psi", PressureUnit.PoundForcePerSquareInch)]);

    public static readonly QuantityCodec<Temperature, TemperatureUnit> Temperature = new(
        "temperature", (x, u) => new Temperature(x, u), (q, u) => q.As(u), q => q.Unit,
        [("K", TemperatureUnit.Kelvin), ("degC", TemperatureUnit.DegreeCelsius), ("degF", TemperatureUnit.DegreeFahrenheit)]);

    public static readonly QuantityCodec<Density, DensityUnit> Density = new(
        "density", (x, u) => new Density(x, u), (q, u) => q.As(u), q => q.Unit,
        [("kg/m3", DensityUnit.KilogramPerCubicMeter), ("g/cm3", DensityUnit.GramPerCubicCentimeter)]);

    public static readonly QuantityCodec<Speed, SpeedUnit> Speed = new(
        "speed", (x, u) => new Speed(x, u), (q, u) => q.As(u), q => q.Unit,
        [("m/s", SpeedUnit.MeterPerSecond), ("mm/s", SpeedUnit.MillimeterPerSecond), ("km/h", SpeedUnit.KilometerPerHour),
            ("ft/s", SpeedUnit.FootPerSecond), ("mph", SpeedUnit.MilePerHour)]);

    public static readonly QuantityCodec<Acceleration, AccelerationUnit> Acceleration = new(
        "acceleration", (x, u) => new Acceleration(x, u), (q, u) => q.As(u), q => q.Unit,
        [("m/s2", AccelerationUnit.MeterPerSecondSquared)]);

    public static readonly QuantityCodec<Angle, AngleUnit> Angle = new(
        "angle", (x, u) => new Angle(x, u), (q, u) => q.As(u), q => q.Unit,
        [("deg", AngleUnit.Degree), ("rad", AngleUnit.Radian)]);

    public static readonly QuantityCodec<SpecificEntropy, SpecificEntropyUnit> SpecificHeat = new(
        "specific heat", (x, u) => new SpecificEntropy(x, u), (q, u) => q.As(u), q => q.Unit,
        [("J/(kg K)", SpecificEntropyUnit.JoulePerKilogramKelvin), ("kJ/(kg K)", SpecificEntropyUnit.KilojoulePerKilogramKelvin)]);

    public static readonly QuantityCodec<ThermalConductivity, ThermalConductivityUnit> Conductivity = new(
        "thermal conductivity", (x, u) => new ThermalConductivity(x, u), (q, u) => q.As(u), q => q.Unit,
        [("W/(m K)", ThermalConductivityUnit.WattPerMeterKelvin)]);

    public static readonly QuantityCodec<HeatTransferCoefficient, HeatTransferCoefficientUnit> HeatTransfer = new(
        "heat transfer coefficient", (x, u) => new HeatTransferCoefficient(x, u), (q, u) => q.As(u), q => q.Unit,
        [("W/(m2 K)", HeatTransferCoefficientUnit.WattPerSquareMeterKelvin)]);

    /// <summary>Sonic conductance, a bare number in the library: each unit stands for its factor.</summary>
    public static readonly QuantityCodec<double, double> SonicConductance = new(
        "sonic conductance", (x, factor) => x * factor, (q, factor) => q / factor, _ => 1,
        [("m3/(s Pa)", 1), ("dm3/(s bar)", 1e-8)]);
}
