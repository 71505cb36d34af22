using System.Reflection;
using System.Text.RegularExpressions;
using Staging.Core.Gases;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>The dependency arrow, read twice: in the sources (names as written) and in the compiled assembly (names as meant).</summary>
public partial class FloorTests
{
    [Fact]
    public void Sources_name_only_floors_below() => Violations.None(Repository.Library.SelectMany(WrittenUses));

    [Fact]
    public void Compiled_types_use_only_floors_below() =>
        Violations.None(typeof(Guard).Assembly.GetTypes().SelectMany(t => CompiledUses(t, t.Namespace)));

    [Fact]
    public void Every_folder_of_the_library_is_a_known_floor() =>
        Assert.Empty(Repository.Library.Select(f => Floors.Of(f.Namespace)).OfType<string>().Where(f => f.Length > 0).Except(Floors.Names));

    [Theory]
    [InlineData("Gases", "Discharge")]
    [InlineData("Gaps", "Flight")]
    [InlineData("Flight", "Gaps")]
    [InlineData("Plans", "Reviews")]
    [InlineData("Studies", "Gaps")]
    [InlineData("Studies", "Reviews")]
    [InlineData("Gaps", "Studies")]
    [InlineData("Gaps", "Sizing")]
    [InlineData("Sizing", "Flight")]
    [InlineData("Sizing", "Reviews")]
    [InlineData("Reviews", "GroundTests")]
    [InlineData("GroundTests", "Reviews")]
    public void The_arrow_refuses_what_points_up_or_sideways(string user, string used)
    {
        Assert.False(Floors.MayUse("Staging.Core." + user, "Staging.Core." + used));
        var file = new SourceFile($"src/Staging.Core/{user}/X.cs", $"using Staging.Core.{used};\nnamespace Staging.Core.{user};");
        Assert.Single(WrittenUses(file));
    }

    [Fact]
    public void A_qualified_name_counts_like_a_using_line()
    {
        var file = new SourceFile(
            "src/Staging.Core/Gases/X.cs", "namespace Staging.Core.Gases;\nclass X { object o = global::Staging.Core.Gaps.Y.Z; }");
        Assert.Single(WrittenUses(file));
    }

    [Fact]
    public void A_use_inside_a_method_body_is_seen() =>
        Assert.Contains(CompiledUses(typeof(ReachesUp), "Staging.Core.Solving"), v => v.Contains("Gases", StringComparison.Ordinal));

    private static IEnumerable<string> WrittenUses(SourceFile file) =>
        from Match use in NameInTheHouse().Matches(file.Code)
        where Floors.Names.Contains(use.Groups[1].Value) && !Floors.MayUse(file.Namespace, "Staging.Core." + use.Groups[1].Value)
        select $"{file.Path}: names {use.Value}";

    private static IEnumerable<string> CompiledUses(Type type, string? home) =>
        from MemberInfo member in UsedMembers.Of(type)
        let used = (member as Type ?? member.DeclaringType)!.Namespace
        where !Floors.MayUse(home, used)
        select $"{home}: {type.Name} uses {used} ({member.Name})";

    [GeneratedRegex(@"(?<![\w.])(?:global::)?Staging\.Core\.(\w+)")]
    private static partial Regex NameInTheHouse();

    private static class ReachesUp
    {
        public static string Name() => PerfectGas.DryAir.Name;
    }
}
