using System.Globalization;
using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>The border for other languages says the same in C#, in the header and in the Python package.</summary>
public partial class NativeBorderTests
{
    private static readonly string Code = string.Join('\n', Repository.Files("src/Staging.Core.Native", "*.cs").Select(f => f.Text));

    private static readonly string Header = Repository.Files("src/Staging.Core.Native", "*.h").Single().Text;

    private static readonly string Python = string.Join('\n', Repository.Files("src/Staging.Core.Native", "*.py").Select(f => f.Text));

    [Fact]
    public void Header_and_Python_package_have_every_call_and_no_other()
    {
        string[] calls = Names(EntryPoint(), Code);
        Assert.NotEmpty(calls);
        Assert.Equal(calls, Names(Prototype(), Header));
        Assert.Equal(calls, Names(PythonCall(), Python));
    }

    [Theory]
    [InlineData("Status", "STAGING_")]
    [InlineData("Verdict", "STAGING_")]
    public void Numbers_mean_the_same(string kind, string prefix)
    {
        Dictionary<string, int> python = Numbers(Regex.Match(Python, $@"class {kind}\(Named\):(.*?)\n\n\n", RegexOptions.Singleline).Value);
        Dictionary<string, int> header = Numbers(Header).Where(n => n.Key != "STAGING_ABI_VERSION")
            .ToDictionary(n => n.Key[prefix.Length..], n => n.Value);
        string code = kind == "Status"
            ? Repository.Files("src/Staging.Core.Native", "Status.cs").Single().Code
            : Regex.Replace(Code, @"Verdict\.(\w+) => (\d)", "$1 = $2");
        Dictionary<string, int> ours = Numbers(Regex.Replace(code, @"(?<=\b[A-Z]\w*[a-z])([A-Z])", "_$1").ToUpperInvariant());
        Assert.NotEmpty(python);
        foreach ((string name, int number) in python)
        {
            Assert.Equal(number, header[name]);
            Assert.Equal(number, ours[name]);
        }
    }

    [Fact]
    public void The_version_of_the_border_is_one()
    {
        string[] versions = [.. ((string[])[Code, Header, Python]).Select(text => Abi().Match(text).Groups[1].Value)];
        Assert.All(versions, v => Assert.Matches(@"^\d+$", v));
        Assert.Single(versions.Distinct());
    }

    /// <summary>The version that a consumer is refused with is that of the dependency.</summary>
    [Fact]
    public void The_package_refuses_units_outside_of_its_dependency()
    {
        string versions = File.ReadAllText(Path.Combine(Repository.Root, "Directory.Packages.props"));
        string targets = Repository.Files("src/Staging.Core/package", "*.targets").Single().Text;
        Match range = Regex.Match(versions, @"""UnitsNet"" Version=""\[([\d.]+), ([\d.]+)\)""");
        Assert.Contains($"<_StagingCoreUnitsFrom>{range.Groups[1].Value}<", targets, StringComparison.Ordinal);
        Assert.Contains($"<_StagingCoreUnitsBelow>{range.Groups[2].Value}<", targets, StringComparison.Ordinal);
    }

    private static string[] Names(Regex pattern, string text) =>
        [.. pattern.Matches(text).Select(m => m.Groups[1].Value).Distinct().Order(StringComparer.Ordinal)];

    private static Dictionary<string, int> Numbers(string text) => Number().Matches(text)
        .DistinctBy(m => m.Groups[1].Value)
        .ToDictionary(m => m.Groups[1].Value, m => int.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture));

    [GeneratedRegex(@"EntryPoint = ""(\w+)""")]
    private static partial Regex EntryPoint();

    [GeneratedRegex(@"^(?:staging_status|const char \*|void|u?int\d+_t) ?\*?(staging_\w+)\(", RegexOptions.Multiline)]
    private static partial Regex Prototype();

    [GeneratedRegex(@"(?:""|\b(?:LIBRARY|library)\.)(staging_\w+)")]
    private static partial Regex PythonCall();

    [GeneratedRegex(@"\b([A-Z][A-Z_]+) = (\d+)")]
    private static partial Regex Number();

    [GeneratedRegex(@"ABI_?VERSION (?:= )?(\d+)", RegexOptions.IgnoreCase)]
    private static partial Regex Abi();
}
