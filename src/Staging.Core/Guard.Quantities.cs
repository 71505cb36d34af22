using System.Runtime.CompilerServices;
using UnitsNet;

namespace Staging.Core;

/// <summary>The same checks for quantities: bounds are plain SI numbers, refusals quote SI.</summary>
internal static partial class Guard
{
    public static Length In(Length value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Meters, low, high, "m", property);

    public static Area In(Area value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.SquareMeters, low, high, "m2", property);

    public static Volume In(Volume value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.CubicMeters, low, high, "m3", property);

    public static Mass In(Mass value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Kilograms, low, high, "kg", property);

    public static Duration In(Duration value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Seconds, low, high, "s", property);

    public static Force In(Force value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Newtons, low, high, "N", property);

    public static Pressure In(Pressure value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Pascals, low, high, "Pa", property);

    public static Temperature In(Temperature value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.Kelvins, low, high, "K", property);

    public static Density In(Density value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.KilogramsPerCubicMeter, low, high, "kg/m3", property);

    public static Speed In(Speed value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.MetersPerSecond, low, high, "m/s", property);

    public static Angle In(Angle value, double lowDegrees, double highDegrees, [CallerMemberName] string property = "") =>
        Checked(value, value.Degrees, lowDegrees, highDegrees, "deg", property);

    public static SpecificEntropy In(SpecificEntropy value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.JoulesPerKilogramKelvin, low, high, "J/(kg K)", property);

    public static MolarMass In(MolarMass value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.KilogramsPerMole, low, high, "kg/mol", property);

    public static ThermalConductivity In(ThermalConductivity value, double low, double high, [CallerMemberName] string property = "") =>
        Checked(value, value.WattsPerMeterKelvin, low, high, "W/(m K)", property);

    public static HeatTransferCoefficient In(HeatTransferCoefficient value, double low, double high,
        [CallerMemberName] string property = "") =>
        Checked(value, value.WattsPerSquareMeterKelvin, low, high, "W/(m2 K)", property);

    private static T Checked<T>(T value, double si, double low, double high, string unit, string property)
    {
        In(si, low, high, unit, property);
        return value;
    }
}
