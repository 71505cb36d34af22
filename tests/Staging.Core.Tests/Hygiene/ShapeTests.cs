using System.Collections.Immutable;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>The public surface is values: sealed or closed, fixed once made, with nothing in them that can be changed from outside.</summary>
public class ShapeTests
{
    [Fact]
    public void Public_classes_are_sealed_or_closed_records_or_static() =>
        Violations.None(Compiled.Library.GetExportedTypes().SelectMany(ShapeRules.OpenClass));

    [Fact]
    public void Instances_cannot_be_changed_once_made() =>
        Violations.None(Compiled.Library.GetExportedTypes().SelectMany(ShapeRules.Changeable));

    [Fact]
    public void Public_members_hand_out_no_mutable_collection() =>
        Violations.None(Compiled.Library.GetExportedTypes().SelectMany(ShapeRules.MutableCollections));

    [Fact]
    public void There_is_no_global_state() => Violations.None(Compiled.Library.GetTypes().SelectMany(ShapeRules.GlobalState));

    [Fact]
    public void The_list_of_other_classes_is_current() =>
        Assert.Empty(ShapeRules.OtherClasses.Keys.Except(Compiled.Library.GetExportedTypes().Select(t => t.FullName)));

    [Theory]
    [InlineData(typeof(OpenRecord))]
    [InlineData(typeof(SealedClass))]
    [InlineData(typeof(OpenUnion))]
    public void An_open_class_is_caught(Type type) => Assert.Single(ShapeRules.OpenClass(type));

    [Fact]
    public void A_setter_a_loose_struct_an_array_and_a_static_field_are_caught()
    {
        Assert.Contains(ShapeRules.Changeable(typeof(WithSetter)), v => v.Contains("Value", StringComparison.Ordinal));
        Assert.NotEmpty(ShapeRules.Changeable(typeof(LooseStruct)));
        Assert.Equal(3, ShapeRules.MutableCollections(typeof(WithCollections)).Count());
        Assert.Single(ShapeRules.GlobalState(typeof(WithStatic)));
    }

    [Fact]
    public void A_checked_init_property_and_an_immutable_array_pass()
    {
        Assert.Empty(ShapeRules.OpenClass(typeof(Good)));
        Assert.Empty(ShapeRules.Changeable(typeof(Good)));
        Assert.Empty(ShapeRules.MutableCollections(typeof(Good)));
        Assert.Empty(ShapeRules.GlobalState(typeof(Good)));
    }

    // Offenders on purpose: each breaks one rule, to show that the rule can fail.
#pragma warning disable CA1002, CA1819, CA2211, CA1051, CA1805
    public record OpenRecord(double X);

    public sealed class SealedClass;

    public abstract record OpenUnion;

    public sealed record WithSetter
    {
        public double Value { get; set; }
    }

    public record struct LooseStruct(double X);

    public sealed record WithCollections
    {
        public double[] Columns { get; init; } = [];

        public ImmutableArray<List<int>> Nested { get; init; } = [];

        public static Span<double> Hand() => new double[1];
    }

    public static class WithStatic
    {
        public static int Calls = 0;
    }
#pragma warning restore CA1002, CA1819, CA2211, CA1051, CA1805

    public sealed record Good
    {
        private static readonly Func<double, double> Same = static x => x;

        public required double Value { get; init => field = Same(value); }

        public ImmutableArray<double> Columns { get; init; } = [];
    }
}
