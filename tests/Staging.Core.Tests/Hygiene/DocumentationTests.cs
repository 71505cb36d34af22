using System.Collections.Immutable;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Every public type and member is documented, and no bare number goes without its unit.</summary>
public class DocumentationTests
{
    private static readonly DocFile Library = DocFile.Of(Compiled.Library);

    [Fact]
    public void Every_public_member_says_what_it_is() =>
        Violations.None(Compiled.Library.GetExportedTypes().SelectMany(t => DocRules.Missing(t, Library)));

    [Fact]
    public void Every_public_bare_number_states_its_unit() =>
        Violations.None(Compiled.Library.GetExportedTypes().SelectMany(t => DocRules.Unitless(t, Library)));

    [Fact]
    public void Missing_and_empty_texts_are_caught()
    {
        string[] found = [.. DocRules.Missing(typeof(Sample), Docs("""
            <member name="T:{0}"><summary>A sample.</summary></member>
            <member name="M:{0}.Area(System.Double,System.Double)"><summary> </summary><param name="width">Width [m].</param></member>
            """))];
        Assert.Contains(found, v => v.EndsWith("Area: no summary", StringComparison.Ordinal));
        Assert.Contains(found, v => v.EndsWith("parameter height is not described", StringComparison.Ordinal));
        Assert.Contains(found, v => v.EndsWith("Area: the result is not described", StringComparison.Ordinal));
        Assert.Contains(found, v => v.EndsWith("Columns: no summary", StringComparison.Ordinal));
        Assert.Equal(9, found.Length);
    }

    [Fact]
    public void A_bare_number_without_unit_is_caught()
    {
        string[] found = [.. DocRules.Unitless(typeof(Sample), Docs("""
            <member name="P:{0}.Ratio"><summary>A ratio in [0, 1].</summary></member>
            <member name="P:{0}.Columns"><summary>Pressures [Pa].</summary></member>
            <member name="M:{0}.Area(System.Double,System.Double)"><summary>Area [m2].</summary><param name="width">Width [m].</param><param name="height">Height.</param></member>
            """))];
        Assert.Equal(2, found.Length);
        Assert.Contains(found, v => v.EndsWith("Ratio: a bare number without a unit", StringComparison.Ordinal));
        Assert.Contains(found, v => v.Contains("parameter height", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(nameof(Sample.Area), "M:Staging.Core.Tests.Hygiene.DocumentationTests.Sample.Area(System.Double,System.Double)")]
    [InlineData(nameof(Sample.Mixed), "M:Staging.Core.Tests.Hygiene.DocumentationTests.Sample.Mixed``1(System.Collections.Generic.IReadOnlyList{``0}@,System.Int32[])")]
    public void Members_are_found_under_the_name_the_compiler_gives_them(string method, string id) =>
        Assert.Equal(id, DocId.Of(typeof(Sample).GetMethod(method)!));

    private static DocFile Docs(string members) =>
        DocFile.Parse($"<doc><members>{members.Replace("{0}", typeof(Sample).FullName!.Replace('+', '.'), StringComparison.Ordinal)}</members></doc>");

    public sealed record Sample
    {
        public double Ratio { get; init; }

        public double Pressure_Pa { get; init; }

        public ImmutableArray<double> Columns { get; init; } = [];

        public static double Area(double width, double height) => width * height;

        public static void Mixed<T>(in IReadOnlyList<T> items, int[] counts) => _ = (items, counts);
    }
}
