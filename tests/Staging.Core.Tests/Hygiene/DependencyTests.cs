using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>A package that a project takes in has its reason in DEVELOPERS.md.</summary>
public partial class DependencyTests
{
    private static readonly string[] Folders = ["src", "tests", "benchmarks", "samples"];

    [Fact]
    public void Every_package_has_its_reason() =>
        Violations.None(Unexplained(
            Folders.SelectMany(f => Repository.Files(f, "*.csproj")),
            File.ReadAllText(Path.Combine(Repository.Root, "DEVELOPERS.md"))));

    [Fact]
    public void An_unexplained_package_is_caught()
    {
        SourceFile[] projects = [new("src/A/A.csproj", """<PackageReference Include="Useful" /> <PackageReference Include="Handy" />""")];
        Assert.Equal(["src/A/A.csproj: DEVELOPERS.md gives no reason for Handy"], Unexplained(projects, "| Other, Useful | src | why |"));
    }

    private static IEnumerable<string> Unexplained(IEnumerable<SourceFile> projects, string guide)
    {
        string[] explained = [.. Row().Matches(guide).SelectMany(row => row.Groups[1].Value.Split(',')).Select(name => name.Trim())];
        return
            from project in projects
            from Match package in Package().Matches(project.Text)
            let name = package.Groups[1].Value
            where name != "Staging.Core" && !explained.Contains(name)
            select $"{project.Path}: DEVELOPERS.md gives no reason for {name}";
    }

    [GeneratedRegex(@"<PackageReference Include=""([^""]+)""")]
    private static partial Regex Package();

    [GeneratedRegex(@"^\| ([\w., ]+) \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
