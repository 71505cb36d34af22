using Staging.Core.Discharge;
using Staging.Core.Flight;
using Staging.Core.Gaps;
using Staging.Core.Reviews;
using Staging.Core.Sizing;
using Staging.Core.Studies;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>Every page of a public type shows code that runs and names the type.</summary>
public class TypeExampleTests
{
    private static readonly Type[] Public = [.. typeof(Guard).Assembly.GetExportedTypes()];

    private static readonly SourceFile[] Pages = [.. Repository.Files("docs", "*.md").Where(p => p.Folder != "docs/examples")];

    private static readonly TypeExamples Written = new(
        Public, Repository.Files("samples", "*.cs").Concat(Repository.Files("tests", "*.cs")).Where(f => !f.Path.Contains("/Hygiene/", StringComparison.Ordinal)), Pages);

    /// <summary>Types without an example of their own, each with its reason.</summary>
    private static readonly Dictionary<Type, string> Elsewhere = new()
    {
    };

    [Fact]
    public void Every_public_type_has_an_example_or_a_reason() =>
        Violations.None(Written.Without.Except(Elsewhere.Keys).Select(t => $"{t}: no region of a sample or a test names it"));

    [Fact]
    public void The_list_of_reasons_is_current() => Assert.Empty(Elsewhere.Keys.Except(Written.Without));

    /// <summary>The files are kept with the sources: one that differs is written anew here, to be read and committed.</summary>
    [Fact]
    public void The_examples_are_those_of_the_sources()
    {
        string folder = Path.Combine(Repository.Root, "docs", "examples");
        Dictionary<string, string> there = Repository.Files("docs/examples", "*.md").ToDictionary(f => f.Name, f => f.Text.ReplaceLineEndings("\n"));
        Dictionary<string, string> wanted = Written.Texts.ToDictionary(t => t.Key + ".md", t => t.Value);
        string[] stale = [.. wanted.Where(w => there.GetValueOrDefault(w.Key) != w.Value).Select(w => w.Key), .. there.Keys.Except(wanted.Keys)];
        foreach (string name in stale)
        {
            if (wanted.TryGetValue(name, out string? text))
                File.WriteAllText(Path.Combine(Directory.CreateDirectory(folder).FullName, name), text);
            else
                File.Delete(Path.Combine(folder, name));
        }

        Violations.None(stale.Select(name => $"docs/examples/{name}: was not that of the sources, and is written anew"));
    }

    [Theory]
    [InlineData("Orifice o;", typeof(Orifice), true)]
    [InlineData("var x = new Orifice();", typeof(Orifice), true)]
    [InlineData("run.Orifice = x; Orifice = x; f(Orifice: x); // Orifice o", typeof(Orifice), false)]
    [InlineData("OrificeFlow f;", typeof(Orifice), false)]
    [InlineData("Nose = new Nose { };", typeof(Nose), true)]
    [InlineData("bool b = Seen == x;", typeof(Nose), false)]
    [InlineData("GapOutcome.Lit l;", typeof(GapOutcome.Lit), true)]
    [InlineData("Lit l; Other.GapOutcome.Lit m;", typeof(GapOutcome.Lit), false)]
    [InlineData("InputSet<int> s;", typeof(InputSet<>), true)]
    [InlineData("EquatableArray<int> s;", typeof(EquatableArray), false)]
    [InlineData("EquatableArray.Create(s);", typeof(EquatableArray<>), false)]
    [InlineData("gap.SizeVents(x);", typeof(VentSizing), true)]
    [InlineData("learned.Odds(x);", typeof(StagingReviewer), false)]
    public void What_names_a_type(string code, Type type, bool named) => Assert.Equal(named ? "a" : null, Of("#region a\n" + code + "\n#endregion\n").Of(type));

    [Fact]
    public void The_shortest_region_that_is_no_fragment_is_shown_with_its_page()
    {
        const string regions = "#region long\nVent a;\n\n\nVent b;\n#endregion\n#region short\nVent c;\n\nVent d;\n#endregion\n#region fragment\nVent e; Jacket f;\n#endregion\n";
        TypeExamples examples = Of(regions, new SourceFile("docs/a/x.md", "# Of vents\n<!-- snippet: short -->\n"));
        Assert.Equal("short", examples.Of(typeof(Vent)));
        Assert.Equal("fragment", examples.Of(typeof(Jacket)));
        string text = examples.Texts.Single(t => t.Key == "Staging.Core.Gaps").Value;
        Assert.Contains("---\nuid: Staging.Core.Gaps.Vent\nexample:\n- *content\n# ", text, StringComparison.Ordinal);
        Assert.Contains("From [Of vents](~/a/x.md):\n\n<!-- snippet: short -->\n```csharp\nVent c;\n\nVent d;\n```\n", text, StringComparison.Ordinal);
    }

    private static TypeExamples Of(string source, params SourceFile[] pages) => new(Public, [new SourceFile("samples/x.cs", source)], pages);
}
