using System.Globalization;
using System.Reflection;
using Staging.Core.Discharge;
using Staging.Core.Gases;
using UnitsNet;

namespace Staging.Core.Tests.Hygiene;

/// <summary>On the two ground floors no public function that returns a number lets not-a-number, an infinity, an absurd quantity or an undefined choice through: each refuses it by name.</summary>
public class RefusalTests
{
    /// <summary>Arguments that are in range, by name.</summary>
    private static readonly Dictionary<string, double> Fitting = (((string Name, double Value)[])
    [
        ("mach", 1.5), ("gamma", 1.3), ("areaRatio", 1.2), ("temperatureRatio", 0.9), ("densityRatio", 0.8), ("friction", 0.2), ("pistonSpeed", 0.3),
        ("drivenGamma", 1.4), ("driverGamma", 1.25), ("soundSpeedRatio", 0.5), ("driverPressureRatio", 3), ("flow", 0.5), ("time", 0.1),
        ("startRatio", 0.4), ("endRatio", 0.7), ("relativeHumidity", 0.5), ("thicknessToDiameter", 3), ("reynolds", 1e5), ("heatCapacityRatio", 1.3),
        ("temperature", 300), ("pressure", 1e5), ("volume", 1e-3), ("effectiveArea", 1e-4), ("soundSpeed", 340), ("acceleration", 1e4),
        ("geometricAltitude", 100), ("throatArea", 1e-5), ("molarMass", 0.029), ("total", 1e-5), ("wallThickness", 1e-3), ("diameter", 3e-3),
        ("mass", 1e-6), ("geometricAltitude_m", 100), ("speed", 0.3), ("throatReynolds", 1e6), ("pipeReynolds", 1e5), ("isentropicExponent", 1.3),
        ("upstream", 2e5), ("downstream", 1.9e5), ("upstreamDensity", 2), ("density", 1000), ("viscosity", 2e-5), ("difference", 1e4),
        ("backPressure", 2e4), ("criticalFlowFactor", 0.68),
    ]).ToDictionary(x => x.Name, x => x.Value);

    /// <summary>More than any quantity here may be; a quantity itself refuses to be no number.</summary>
    private const double TooMuch = 1e30;

    private static readonly Provenance Invented = new() { Source = "invented for a test", How = Evidence.Invented };

    /// <summary>Models whose functions are called too.</summary>
    private static readonly object[] Models =
    [
        PerfectGas.DryAir,
        BlackPowderProducts.Nominal,
        StandardAtmosphere.Us1976,
        new SiteAtmosphere(new SiteConditions { Elevation = Length.Zero, Pressure = Pressure.FromBars(1), Temperature = Temperature.FromKelvins(290), RelativeHumidity = 0.5 }),
        new UniformAtmosphere
        {
            Pressure = Pressure.FromBars(1),
            Temperature = Temperature.FromKelvins(290),
            Density = Density.FromKilogramsPerCubicMeter(1.2),
            SoundSpeed = Speed.FromMetersPerSecond(340),
        },
        RiemannProblem.Solve(new FlowState(1, 0, 1, 1.4), new FlowState(0.125, 0, 0.1, 1.4)),
        new JobsonLaw { IncompressibleContraction = 0.6 },
        new CriticalNozzle { ThroatDiameter = Length.FromMillimeters(5), Shape = CriticalNozzleShape.Toroidal },
        new OrificePlateIso5167 { PipeDiameter = Length.FromMillimeters(80), Bore = Length.FromMillimeters(40), Tappings = PressureTappings.Corner },
    ];

    public static TheoryData<string> Functions => [.. Methods().Select(m => m.Key).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Functions))]
    public void What_is_no_number_or_no_choice_is_refused_by_name(string function)
    {
        MethodInfo method = Methods()[function];
        ParameterInfo[] parameters = method.GetParameters();
        object?[] fitting = [.. parameters.Select(p => Fit(method, p))];
        object? model = Models.FirstOrDefault(m => m.GetType() == method.DeclaringType);
        method.Invoke(model, fitting);
        for (int i = 0; i < parameters.Length; i++)
        {
            foreach (object bad in Unfit(parameters[i].ParameterType))
            {
                object?[] arguments = [.. fitting];
                arguments[i] = bad;
                Exception? thrown = Record.Exception(() => method.Invoke(model, arguments))?.InnerException;
                var refusal = Assert.IsType<ArgumentOutOfRangeException>(thrown);
                Assert.Equal(parameters[i].Name, refusal.ParamName, ignoreCase: true);
            }
        }
    }

    private static Dictionary<string, MethodInfo> Methods() => (
        from type in typeof(PerfectGas).Assembly.GetExportedTypes()
        where type.Namespace is "Staging.Core.Gases" or "Staging.Core.Discharge"
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        where !method.IsSpecialName && method.ReturnType != typeof(bool) && (method.IsStatic || Models.Any(m => m.GetType() == type)) && method.GetParameters().Any(p => Unfit(p.ParameterType).Length > 0) && method.GetParameters().All(CanFit)
        select method).ToDictionary(m => $"{m.DeclaringType!.Name}.{m.Name}");

    private static bool CanFit(ParameterInfo p) =>
        p.ParameterType != typeof(object) && !p.ParameterType.IsByRef && !p.ParameterType.IsInterface && p.ParameterType.Namespace is not "Staging.Core.Discharge"
        || p.ParameterType.IsEnum;

    private static object? Fit(MethodInfo method, ParameterInfo p)
    {
        if (p.ParameterType.IsEnum)
            return Enum.GetValues(p.ParameterType).GetValue(0);
        if (p.ParameterType == typeof(bool))
            return false;
        if (p.ParameterType == typeof(int))
            return 2;
        if (p.ParameterType == typeof(string))
            return "a name";
        if (p.ParameterType == typeof(Provenance))
            return Invented;
        if (p.ParameterType == typeof(PerfectGas))
            return PerfectGas.DryAir;
        if (p.ParameterType == typeof(GasState))
            return new GasState { Gas = PerfectGas.DryAir, Pressure = Pressure.FromBars(1), Temperature = Temperature.FromKelvins(300) };
        double value = Value(method, p.Name!);
        return p.ParameterType == typeof(double) || p.ParameterType == typeof(double?) ? value : Quantity(p.ParameterType, value);
    }

    /// <summary>A ratio of pressures is above 1 behind a shock and at the start of a vent, below 1 elsewhere.</summary>
    private static double Value(MethodInfo method, string name) => (method.DeclaringType!.Name, method.Name, name) switch
    {
        ("NormalShock", _, "pressureRatio") or ("Vessel", "SteadyFlow", "pressureRatio") => 1.5,
        ("Vessel", "VentTime" or "PressureAfterVenting", "startRatio") => 3,
        ("Vessel", "VentTime", "endRatio") => 1.5,
        ("FannoFlow", "SupersonicMach", "friction") => 0.1,
        (_, _, "pressureRatio") => 0.8,
        _ => Fitting[name],
    };

    private static object[] Unfit(Type type)
    {
        if (type == typeof(double) || type == typeof(double?))
            return [double.NaN, double.PositiveInfinity, double.NegativeInfinity];
        if (type.IsEnum)
            return [Enum.ToObject(type, 99)];
        if (type == typeof(int))
            return [0];
        return type.Namespace == "UnitsNet" && type.IsValueType
            ? [Quantity(type, TooMuch), Quantity(type, -TooMuch)]
            : [];
    }

    /// <summary>A quantity of a value in the SI unit of its kind.</summary>
    private static object Quantity(Type type, double value)
    {
        string unit = type.Name switch
        {
            nameof(Temperature) => "FromKelvins",
            nameof(Pressure) => "FromPascals",
            nameof(Length) => "FromMeters",
            nameof(Area) => "FromSquareMeters",
            nameof(Volume) => "FromCubicMeters",
            nameof(Mass) => "FromKilograms",
            nameof(Speed) => "FromMetersPerSecond",
            nameof(Acceleration) => "FromMetersPerSecondSquared",
            nameof(MolarMass) => "FromKilogramsPerMole",
            nameof(Density) => "FromKilogramsPerCubicMeter",
            nameof(DynamicViscosity) => "FromPascalSeconds",
            nameof(MassFlow) => "FromKilogramsPerSecond",
            _ => throw new ArgumentException(type.Name, nameof(type)),
        };
        MethodInfo make = type.GetMethod(unit, [typeof(QuantityValue)]) ?? type.GetMethod(unit, [typeof(double)])!;
        object number = make.GetParameters()[0].ParameterType == typeof(double) ? value : (QuantityValue)value;
        return make.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [number], CultureInfo.InvariantCulture)!;
    }
}
