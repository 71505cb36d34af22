using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Staging.Core.Gases;
using Staging.Core.Plans.Codecs;
using Staging.Core.Plans.Reading;
using Staging.Core.Plans.Records;

namespace Staging.Core.Tests.Plans;

/// <summary>The descriptions of the records: complete, and with the ranges of the records themselves.</summary>
public class PlanCodecTests
{
    private const BindingFlags Everything = BindingFlags.NonPublic | BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>
    /// Required properties without a required key of their own: uniform gravity has no radius, and a gap is cast to the one kind
    /// there is.
    /// </summary>
    private static readonly string[] ToldOtherwise = ["Gravity.Radius", "ByGap.Gap"];

    /// <summary>
    /// Required properties whose key may be left out: a source, which is then the plan's own; one motor; a guide without friction; the
    /// standard air; the igniter of the launch; the nominal edge.
    /// </summary>
    private static readonly string[] MayBeLeftOut =
        ["Provenance", "MotorCount", "FrictionCoefficient", "ConstantFriction", "Atmosphere", "Ignition", "EdgeFactor"];

    public static TheoryData<string, double, string, double> Conversions => new()
    {
        // Exact by definition of the units: international inch, foot and pound (1959), standard gravity for the pound-force, degree Fahrenheit.
        { "in", 1, "length", 0.0254 },
        { "ft", 1, "length", 0.3048 },
        { "mm", 18, "length", 0.018 },
        { "cm", 25, "length", 0.25 },
        { "um", 140, "length", 140e-6 },
        { "km", 1.5, "length", 1500 },
        { "in2", 1, "area", 0.00064516 },
        { "mm2", 478, "area", 478e-6 },
        { "cm2", 1, "area", 1e-4 },
        { "L", 1, "volume", 1e-3 },
        { "cm3", 5, "volume", 5e-6 },
        { "mm3", 1, "volume", 1e-9 },
        { "lb", 1, "mass", 0.45359237 },
        { "oz", 16, "mass", 0.45359237 },
        { "g", 1, "mass", 1e-3 },
        { "mg", 1, "mass", 1e-6 },
        { "ms", 1, "duration", 1e-3 },
        { "us", 1, "duration", 1e-6 },
        { "ns", 1, "duration", 1e-9 },
        { "lbf", 1, "force", 0.45359237 * 9.80665 },
        { "kN", 1, "force", 1000 },
        { "psi", 1, "pressure", 0.45359237 * 9.80665 / 0.00064516 },
        { "bar", 1, "pressure", 1e5 },
        { "hPa", 1013.25, "pressure", 101_325 },
        { "kPa", 1, "pressure", 1e3 },
        { "MPa", 1, "pressure", 1e6 },
        { "degC", 15, "temperature", 288.15 },
        { "degF", 59, "temperature", 288.15 },
        { "km/h", 36, "speed", 10 },
        { "mm/s", 12.5, "speed", 0.0125 },
        { "ft/s", 1, "speed", 0.3048 },
        { "mph", 1, "speed", 0.44704 },
        { "g/cm3", 1.7, "density", 1700 },
        { "rad", Math.PI / 2, "angle", 90 },
        { "kJ/(kg K)", 1, "specific heat", 1000 },
        { "dm3/(s bar)", 1, "sonic conductance", 1e-8 },
    };

    [Theory]
    [MemberData(nameof(Conversions))]
    public void Every_unit_counts_what_it_should(string unit, double value, string quantity, double inBaseUnit) =>
        Assert.Equal(inBaseUnit, InBaseUnit(quantity, value, unit), 1e-12 * Math.Abs(inBaseUnit));

    [Fact]
    public void Every_unit_but_the_base_one_is_in_that_list()
    {
        (string, string)[] listed = [.. Conversions.Select(c => (c.Data.Item3, c.Data.Item1))];
        Assert.Empty(AllQuantities().SelectMany(q => Symbols(q.Form).Skip(1).Select(u => (q.Name, u))).Except(listed));
    }

    [Fact]
    public void Every_number_has_a_range_of_its_record_in_its_base_unit()
    {
        KeyDescription[] numbers = [.. AllRecords().SelectMany(r => r.Facts).Where(f => f.BaseUnit is not null)];
        Assert.True(numbers.Length > 70, $"only {numbers.Length} numbers were found");
        Assert.DoesNotContain(numbers, n => n.Range?.Unit != n.BaseUnit);
    }

    [Fact]
    public void The_ranges_are_those_of_the_records()
    {
        AcceptedRange bore = RangeOf(GapCodecs.Tube, "bore"), gamma = RangeOf(GasCodecs.Gas, "heatCapacityRatio"), count = RangeOf(DischargeCodecs.Holes, "count");
        Assert.Equal(new AcceptedRange(0.002, true, 0.2, "m"), bore);
        Assert.Equal(new AcceptedRange(1.01, true, 5.0 / 3.0, "-"), gamma);
        Assert.Equal(new AcceptedRange(1, true, 1000, "-"), count);
        Assert.Throws<ArgumentOutOfRangeException>(() => PerfectGas.DryAir with { HeatCapacityRatio = Math.BitDecrement(gamma.Low) });
        Assert.Equal(gamma.Low, (PerfectGas.DryAir with { HeatCapacityRatio = gamma.Low }).HeatCapacityRatio);
    }

    [Fact]
    public void Every_required_property_is_a_required_key_of_the_same_name() =>
        Assert.Empty(AllRecords().SelectMany(Missing));

    [Fact]
    public void Every_key_is_explained() =>
        Assert.DoesNotContain(AllRecords().SelectMany(r => r.Facts), f => f.Description.Length < 4);

    private static double InBaseUnit(string quantity, double value, string unit)
    {
        object form = AllQuantities().Single(q => q.Name == quantity).Form;
        return (double)typeof(PlanCodecTests).GetMethod(nameof(Read), BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(form.GetType().BaseType!.GenericTypeArguments).Invoke(null, [form, value, unit])!;
    }

    private static double Read<T>(NumericCodec<T> form, double value, string unit)
    {
        var reading = new ReadContext(null);
        using JsonDocument json = JsonDocument.Parse(JsonSerializer.Serialize(new { value, unit }));
        Assert.True(form.TryRead(JsonCursor.Root(json.RootElement, reading), out T? read), string.Join('\n', reading.Problems));
        return form.ToBase(read);
    }

    private static (string Name, object Form)[] AllQuantities() =>
        [.. typeof(Quantities).GetFields().Select(f => f.GetValue(null)!).Select(q => (NameOf(q), q))];

    private static string NameOf(object form) => (string)form.GetType().GetProperty("Name")!.GetValue(form)!;

    private static ImmutableArray<string> Symbols(object form) => (ImmutableArray<string>)form.GetType().GetProperty("Symbols")!.GetValue(form)!;

    /// <summary>Every record that is reachable from the plan.</summary>
    private static IEnumerable<IRecordCodec> AllRecords()
    {
        var found = new HashSet<object>(ReferenceEqualityComparer.Instance);
        Walk(PlanCodecs.Plan, found);
        return found.OfType<IRecordCodec>();
    }

    /// <summary>Collects the forms that a form holds, directly or in a list.</summary>
    private static void Walk(object? at, HashSet<object> found)
    {
        if (at is IEnumerable list && at.GetType().GenericTypeArguments.Any(IsForm))
        {
            foreach (object? item in list)
                Walk(item, found);
        }
        else if (at is not null && IsForm(at.GetType()) && found.Add(at))
        {
            for (Type? type = at.GetType(); type is not null && IsForm(type); type = type.BaseType)
            {
                foreach (FieldInfo field in type.GetFields(Everything))
                    Walk(field.GetValue(at), found);
            }
        }
    }

    private static bool IsForm(Type type) => type.Namespace?.StartsWith("Staging.Core.Plans", StringComparison.Ordinal) == true && !typeof(Delegate).IsAssignableFrom(type);

    private static AcceptedRange RangeOf(IRecordCodec form, string key) => form.Facts.Single(f => f.Key == key).Range!;

    private static IEnumerable<string> Missing(IRecordCodec form) =>
        from PropertyInfo property in form.Record.GetProperties()
        where property.GetCustomAttribute<RequiredMemberAttribute>() is not null && !ToldOtherwise.Contains($"{form.Record.Name}.{property.Name}")
        where !form.Facts.Any(f => (f.Required || MayBeLeftOut.Contains(property.Name)) && f.Property == property.Name && property.Name.StartsWith(f.Key, StringComparison.OrdinalIgnoreCase))
        select $"{form.Record.Name}.{property.Name}";
}
