using System.Reflection;
using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene.Pages;

/// <summary>Every public model is held to the outside, or docs/checks.md says why it is not.</summary>
public partial class ModelCheckTests
{
    /// <summary>What every value does, and what only reads or writes one.</summary>
    private static readonly HashSet<string> NotACalculation =
    [
        "Equals", "GetHashCode", "ToString", "Deconstruct", "<Clone>$", "GetEnumerator", "CompareTo", "Match", "Check", "Read", "Parse", "TryParse",
        "WriteTo", "WriteCsv", "ToJson",
    ];

    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "checks.md"));
    private static readonly string Rows = File.ReadAllText(Path.Combine(Repository.Root, "docs", "validation", "outside-checks.md"));

    [Fact]
    public void Every_public_type_that_computes_is_named() => Violations.None(Unnamed(Page));

    [Fact]
    public void Every_quoted_beginning_is_that_of_a_row() => Violations.None(Missing(Page, Rows));

    [Fact]
    public void A_model_without_a_place_and_a_quote_without_a_row_are_caught()
    {
        Assert.Contains(Unnamed(Page.Replace("`FannoFlow`", "friction", StringComparison.Ordinal)), v => v.Contains("FannoFlow", StringComparison.Ordinal));
        Assert.Single(Missing("| a | `B` | \"choked flow of nothing\" |", Rows));
    }

    private static IEnumerable<string> Unnamed(string page) =>
        from type in Compiled.Library.GetExportedTypes()
        where !type.IsEnum && !type.IsInterface && !typeof(Exception).IsAssignableFrom(type) && type.GetMethods(
            BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .Any(method => !method.IsSpecialName && !NotACalculation.Contains(method.Name))
        let name = (type.DeclaringType ?? type).Name.Split('`')[0]
        where !page.Contains($"`{name}`", StringComparison.Ordinal)
        select $"{type.FullName} computes, and docs/checks.md names neither its rows nor why it has none";

    private static IEnumerable<string> Missing(string page, string rows) =>
        from line in page.Split('\n')
        where line.StartsWith("| ", StringComparison.Ordinal)
        from Match quote in Quoted().Matches(line)
        let beginning = quote.Groups[1].Value
        where !rows.Contains($"\n| {beginning}", StringComparison.Ordinal)
        select $"no outside check begins with {beginning}";

    [GeneratedRegex("\"([^\"]+)\"")]
    private static partial Regex Quoted();
}
