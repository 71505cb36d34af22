using System.Reflection;
using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene.Pages;

/// <summary>The glossary names types and members that are there.</summary>
public partial class GlossaryTests
{
    private static readonly Type[] Types = typeof(Guard).Assembly.GetTypes();

    [Fact]
    public void Every_name_in_the_glossary_is_in_the_code() =>
        Violations.None(Missing(Repository.Files("docs", "glossary.md").Single().Text));

    [Theory]
    [InlineData("| bore | `GuideTube.Bore` |", 0)]
    [InlineData("| bore | `GuideTube.Caliber` |", 1)]
    [InlineData("| bore | `GideTube` |", 1)]
    public void A_name_that_is_gone_is_caught(string row, int violations) => Assert.Equal(violations, Missing(row).Count());

    private static IEnumerable<string> Missing(string text) =>
        from Match name in CodeName().Matches(text)
        where !IsThere(name.Groups[1].Value.Split('.'))
        select $"docs/glossary.md: no {name.Groups[1].Value} in the library";

    private static bool IsThere(string[] path)
    {
        IEnumerable<Type> found = Types.Where(t => Plain(t) == path[0]);
        return path.Length == 1 ? found.Any() : found.Any(t => Holds(t, path[1]));
    }

    private static bool Holds(Type type, string member) =>
        type.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.FlattenHierarchy)
            .Any(m => m.Name == member || (m is Type nested && Plain(nested) == member));

    private static string Plain(Type type) => type.Name.Split('`')[0];

    [GeneratedRegex(@"`([A-Z]\w+(?:\.[A-Z]\w*)*)(?:<\w+>)?`")]
    private static partial Regex CodeName();
}
