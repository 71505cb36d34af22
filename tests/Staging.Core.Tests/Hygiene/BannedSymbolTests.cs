using System.Globalization;
using System.Reflection;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// A run depends on its input alone: no clock, no console, no environment, no ambient culture, no foreign randomness, no rounding that is
/// the processor's choice.
/// </summary>
public class BannedSymbolTests
{
    /// <summary>Types, or namespaces that end in a dot, with the reason they are not used.</summary>
    private static readonly Dictionary<string, string> BannedTypes = new()
    {
        ["System.Random"] = "its sequence is not ours to fix; use the library's own counter-based streams",
        ["System.Console"] = "the library has no screen",
        ["System.Environment"] = "a result must not depend on the machine",
        ["System.Threading.Thread"] = "nothing sleeps, and the culture of a thread is not read",
        ["MathNet.Numerics.OdeSolvers."] = "its order falls to one on time-dependent systems",
        ["MathNet.Numerics.RootFinding."] = "its accuracy is in the function value as well as in the argument",
        ["MathNet.Numerics.FindRoots"] = "its accuracy is in the function value as well as in the argument",
        ["MathNet.Numerics.Interpolation."] = "it extrapolates silently",
        ["MathNet.Numerics.Interpolate"] = "it extrapolates silently",
        ["MathNet.Numerics.Random."] = "its streams are not ours to fix",
    };

    private static readonly Dictionary<string, string> BannedMembers = new()
    {
        ["System.DateTime.get_Now"] = "no clock",
        ["System.DateTime.get_UtcNow"] = "no clock",
        ["System.DateTime.get_Today"] = "no clock",
        ["System.DateTimeOffset.get_Now"] = "no clock",
        ["System.DateTimeOffset.get_UtcNow"] = "no clock",
        ["System.Guid.NewGuid"] = "not reproducible",
        ["System.Double.Lerp"] = "it rounds once or twice, as the processor has it",
        ["System.Double.MultiplyAddEstimate"] = "it rounds once or twice, as the processor has it",
        ["System.Double.ReciprocalEstimate"] = "its accuracy is the processor's",
        ["System.Double.ReciprocalSqrtEstimate"] = "its accuracy is the processor's",
        ["System.Math.ReciprocalEstimate"] = "its accuracy is the processor's",
        ["System.Math.ReciprocalSqrtEstimate"] = "its accuracy is the processor's",
        ["System.Numerics.Vector.Sum"] = "its order is that of the processor's registers",
        ["System.Numerics.Vector.Dot"] = "its order is that of the processor's registers",
        ["System.Globalization.CultureInfo.get_CurrentCulture"] = "numbers are written the same everywhere",
        ["System.Globalization.CultureInfo.get_CurrentUICulture"] = "numbers are written the same everywhere",
    };

    /// <summary>An iterator method asks which thread enumerates it, to reuse itself; no result depends on that.</summary>
    private const string WrittenByTheCompiler = "System.Environment.get_CurrentManagedThreadId";

    [Fact]
    public void The_library_uses_no_banned_symbol() => Violations.None(Compiled.Library.GetTypes().SelectMany(Uses));

    [Fact]
    public void Each_kind_of_banned_use_is_seen()
    {
        string[] found = [.. Uses(typeof(Offender))];
        Assert.Contains(found, v => v.Contains("DateTime.get_Now", StringComparison.Ordinal));
        Assert.Contains(found, v => v.Contains("System.Random", StringComparison.Ordinal));
        Assert.Contains(found, v => v.Contains("System.Console", StringComparison.Ordinal));
        Assert.Contains(found, v => v.Contains("System.Environment", StringComparison.Ordinal));
        Assert.Contains(found, v => v.Contains("CurrentCulture", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("MathNet.Numerics.OdeSolvers.RungeKutta")]
    [InlineData("MathNet.Numerics.RootFinding.Brent")]
    [InlineData("MathNet.Numerics.Interpolate")]
    public void A_namespace_is_banned_with_all_it_holds(string type) => Assert.NotNull(Reason(type, "Any"));

    [Fact]
    public void Neighbours_of_banned_names_are_free()
    {
        Assert.Null(Reason("System.RandomAccess", "Read"));
        Assert.Null(Reason("MathNet.Numerics.Distributions.Normal", "InvCDF"));
    }

    [Fact]
    public void An_iterator_is_free() =>
        Assert.Empty(typeof(Counting).GetNestedTypes(BindingFlags.NonPublic).SelectMany(Uses));

    private static IEnumerable<string> Uses(Type type) =>
        from MemberInfo member in UsedMembers.Of(type)
        where member is not Type
        let owner = member.DeclaringType!.FullName ?? ""
        let reason = Reason(owner, member.Name)
        where reason is not null && !IsOfIterator(type, member)
        select $"{type.FullName}: uses {owner}.{member.Name} ({reason})";

    /// <summary>The compiler lets an iterator ask which thread it runs on, to reuse its own object: no result depends on it.</summary>
    private static bool IsOfIterator(Type type, MemberInfo member) =>
        member.Name == "get_CurrentManagedThreadId" && Compiled.IsGenerated(type);

    private static string? Reason(string type, string member) =>
        WrittenByTheCompiler == $"{type}.{member}"
            ? null
            : BannedMembers.GetValueOrDefault($"{type}.{member}") ?? BannedTypes.FirstOrDefault(b => b.Key.EndsWith('.') ? type.StartsWith(b.Key, StringComparison.Ordinal) : type == b.Key).Value;

    private static class Offender
    {
#pragma warning disable CA5394
        private static readonly Random Dice = new();

        public static string Say()
        {
            Console.WriteLine(Dice.Next());
            return DateTime.Now.ToString(CultureInfo.CurrentCulture) + Environment.NewLine;
        }
#pragma warning restore CA5394
    }

    private static class Counting
    {
        public static IEnumerable<int> ToTwo()
        {
            yield return 1;
            yield return 2;
        }
    }
}
