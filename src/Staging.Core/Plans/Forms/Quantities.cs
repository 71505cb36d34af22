using UnitsNet;
using UnitsNet.Units;

namespace Staging.Core.Plans.Forms;

/// <summary>The quantities of a plan with the units that each accepts. The first unit is the one in which ranges are kept.</summary>
internal static class Quantities
{
    public static QuantityForm<Length, LengthUnit> Length { get; } = new(
        "length", (x, u) => new UnitsNet.Length(x, u), (x, u) => x.As(u), x => x.Unit,
        [("m", LengthUnit.Meter), ("mm", LengthUnit.Millimeter), ("cm", LengthUnit.Centimeter), ("km", LengthUnit.Kilometer), ("in", LengthUnit.Inch), ("ft", LengthUnit.Foot)]);

    public static QuantityForm<Area, AreaUnit> Area { get; } = new(
        "area", (x, u) => new UnitsNet.Area(x, u), (x, u) => x.As(u), x => x.Unit,
        [("m2", AreaUnit.SquareMeter), ("mm2", AreaUnit.SquareMillimeter), ("cm2", AreaUnit.SquareCentimeter), ("in2", AreaUnit.SquareInch)]);

    public static QuantityForm<Volume, VolumeUnit> Volume { get; } = new(
        "volume", (x, u) => new UnitsNet.Volume(x, u), (x, u) => x.As(u), x => x.Unit,
        [("m3", VolumeUnit.CubicMeter), ("mm3", VolumeUnit.CubicMillimeter), ("cm3", VolumeUnit.CubicCentimeter), ("L", VolumeUnit.Liter)]);

    public static QuantityForm<Mass, MassUnit> Mass { get; } = new(
        "mass", (x, u) => new UnitsNet.Mass(x, u), (x, u) => x.As(u), x => x.Unit,
        [("kg", MassUnit.Kilogram), ("g", MassUnit.Gram), ("mg", MassUnit.Milligram), ("oz", MassUnit.Ounce), ("lb", MassUnit.Pound)]);

    public static QuantityForm<Duration, DurationUnit> Duration { get; } = new(
        "duration", (x, u) => new UnitsNet.Duration(x, u), (x, u) => x.As(u), x => x.Unit,
        [("s", DurationUnit.Second), ("ms", DurationUnit.Millisecond), ("us", DurationUnit.Microsecond)]);

    public static QuantityForm<Force, ForceUnit> Force { get; } = new(
        "force", (x, u) => new UnitsNet.Force(x, u), (x, u) => x.As(u), x => x.Unit,
        [("N", ForceUnit.Newton), ("kN", ForceUnit.Kilonewton), ("lbf", ForceUnit.PoundForce)]);

    public static QuantityForm<Pressure, PressureUnit> Pressure { get; } = new(
        "pressure", (x, u) => new UnitsNet.Pressure(x, u), (x, u) => x.As(u), x => x.Unit,
        [("Pa", PressureUnit.Pascal), ("hPa", PressureUnit.Hectopascal), ("kPa", PressureUnit.Kilopascal), ("MPa", PressureUnit.Megapascal), ("bar", PressureUnit.Bar), ("psi", PressureUnit.PoundForcePerSquareInch)]);

    public static QuantityForm<Temperature, TemperatureUnit> Temperature { get; } = new(
        "temperature", (x, u) => new UnitsNet.Temperature(x, u), (x, u) => x.As(u), x => x.Unit,
        [("K", TemperatureUnit.Kelvin), ("degC", TemperatureUnit.DegreeCelsius), ("degF", TemperatureUnit.DegreeFahrenheit)]);

    public static QuantityForm<Density, DensityUnit> Density { get; } = new(
        "density", (x, u) => new UnitsNet.Density(x, u), (x, u) => x.As(u), x => x.Unit,
        [("kg/m3", DensityUnit.KilogramPerCubicMeter), ("g/cm3", DensityUnit.GramPerCubicCentimeter)]);

    public static QuantityForm<Speed, SpeedUnit> Speed { get; } = new(
        "speed", (x, u) => new UnitsNet.Speed(x, u), (x, u) => x.As(u), x => x.Unit,
        [("m/s", SpeedUnit.MeterPerSecond), ("km/h", SpeedUnit.KilometerPerHour), ("ft/s", SpeedUnit.FootPerSecond)]);

    public static QuantityForm<Angle, AngleUnit> Angle { get; } = new(
        "angle", (x, u) => new UnitsNet.Angle(x, u), (x, u) => x.As(u), x => x.Unit,
        [("deg", AngleUnit.Degree), ("rad", AngleUnit.Radian)]);

    public static QuantityForm<Acceleration, AccelerationUnit> Acceleration { get; } = new(
        "acceleration", (x, u) => new UnitsNet.Acceleration(x, u), (x, u) => x.As(u), x => x.Unit,
        [("m/s2", AccelerationUnit.MeterPerSecondSquared)]);

    public static QuantityForm<SpecificEntropy, SpecificEntropyUnit> SpecificHeat { get; } = new(
        "specific heat", (x, u) => new SpecificEntropy(x, u), (x, u) => x.As(u), x => x.Unit,
        [("J/(kg K)", SpecificEntropyUnit.JoulePerKilogramKelvin), ("kJ/(kg K)", SpecificEntropyUnit.KilojoulePerKilogramKelvin)]);

    public static QuantityForm<ThermalConductivity, ThermalConductivityUnit> Conductivity { get; } = new(
        "thermal conductivity", (x, u) => new ThermalConductivity(x, u), (x, u) => x.As(u), x => x.Unit,
        [("W/(m K)", ThermalConductivityUnit.WattPerMeterKelvin)]);

    public static QuantityForm<HeatTransferCoefficient, HeatTransferCoefficientUnit> HeatTransfer { get; } = new(
        "heat transfer coefficient", (x, u) => new HeatTransferCoefficient(x, u), (x, u) => x.As(u), x => x.Unit,
        [("W/(m2 K)", HeatTransferCoefficientUnit.WattPerSquareMeterKelvin)]);
}
