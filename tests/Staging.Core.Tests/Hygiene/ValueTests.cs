using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Records are values: two that hold equal things are equal, all the way down.</summary>
public class ValueTests
{
    [Fact]
    public void Nothing_in_a_record_is_compared_by_reference() => Violations.None(
        Compiled.Library.GetExportedTypes().SelectMany(ValueRules.ComparedByReference));

    [Theory]
    [InlineData(typeof(WithArray))]
    [InlineData(typeof(WithImmutableArray))]
    [InlineData(typeof(WithMemory))]
    [InlineData(typeof(WithFunction))]
    [InlineData(typeof(WithList))]
    [InlineData(typeof(Derived))]
    public void A_field_that_is_compared_by_reference_is_caught(Type type) => Assert.Single(ValueRules.ComparedByReference(type));

    [Fact]
    public void A_list_that_compares_by_value_passes() => Assert.Empty(ValueRules.ComparedByReference(typeof(WithValues)));

    /// <summary>A number that names no member of a choice would be written as a number, which no reader takes back.</summary>
    [Fact]
    public void A_choice_that_is_none_is_refused() => Violations.None(
        from type in Compiled.Library.GetExportedTypes()
        where type.IsClass && !type.IsAbstract
        let closed = type.IsGenericType ? type.MakeGenericType([.. type.GetGenericArguments().Select(_ => typeof(object))]) : type
        from property in closed.GetProperties()
        where property.PropertyType.IsEnum && property.SetMethod is { IsPublic: true } && Takes(RuntimeHelpers.GetUninitializedObject(closed), property, 99)
        select $"{type.Name}.{property.Name} takes 99");

    private static bool Takes(object model, PropertyInfo property, int value)
    {
        try
        {
            property.SetValue(model, Enum.ToObject(property.PropertyType, value));
            return true;
        }
        catch (TargetInvocationException e) when (e.InnerException is ArgumentOutOfRangeException)
        {
            return false;
        }
    }

    // Offenders on purpose: each breaks the rule, to show that it can fail.
#pragma warning disable CA1002, CA1819
    public sealed record WithArray(double[] Values);

    public sealed record WithImmutableArray(ImmutableArray<double> Values);

    public sealed record WithMemory(ReadOnlyMemory<double> Values);

    public sealed record WithFunction(Func<double> Value);

    public sealed record WithList(List<double> Values);

    public abstract record Base(double[] Values);

    public sealed record Derived(double Given) : Base([Given]);
#pragma warning restore CA1002, CA1819

    public sealed record WithValues(EquatableArray<double> Values, string Name);
}
