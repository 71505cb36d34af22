using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// The example on the page of each public type: the shortest region of a sample or a test that names the type, unless it is a mere
/// fragment, and the page that shows that region. One text for each namespace, in the form in which the documentation tool adds to a page of the reference.
/// </summary>
internal sealed partial class TypeExamples(IReadOnlyCollection<Type> types, IEnumerable<SourceFile> sources, IEnumerable<SourceFile> pages)
{
    private const string Head = "# Written by the tests from the regions of samples and tests; do not edit.";

    /// <summary>Lines below which a region says little by itself: it is shown where no other names the type.</summary>
    private const int Fragment = 3;

    private readonly IReadOnlyList<Example> examples = [.. sources.SelectMany(Snippets.Regions)
        .GroupBy(r => r.Key, r => r.Value)
        .Select(r => new Example(r.Key, r.First(), CodeText.Of(r.First()), ShowingPage(pages, r.Key)))
        .OrderBy(e => e.Lines < Fragment).ThenBy(e => e.Lines).ThenBy(e => e.Page is null).ThenBy(e => e.Name, StringComparer.Ordinal)];

    private readonly ILookup<string, Type> byMethod = types
        .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .ToLookup(m => m.Name, m => m.DeclaringType!);

    /// <summary>Types that no region names.</summary>
    public IEnumerable<Type> Without => types.Where(t => Of(t) is null);

    /// <summary>The texts by namespace.</summary>
    public IEnumerable<KeyValuePair<string, string>> Texts =>
        from type in types
        group type by type.Namespace! into space
        orderby space.Key
        select KeyValuePair.Create(space.Key, string.Concat(space.OrderBy(Uid, StringComparer.Ordinal).Select(Entry)));

    /// <summary>The region that a type's page shows.</summary>
    public string? Of(Type type) => ShownFor(type)?.Name;

    private Example? ShownFor(Type type)
    {
        Regex named = Named(type);
        return examples.FirstOrDefault(e => named.IsMatch(e.Code));
    }

    private string Entry(Type type)
    {
        if (ShownFor(type) is not { } example)
            return "";
        var text = new StringBuilder();
        text.Append(Invariant($"---\nuid: {Uid(type)}\nexample:\n- *content\n{Head}\n---\n"));
        if (example.Page is { } page)
            text.Append(Invariant($"From [{Title(page)}](~/{page.Path["docs/".Length..]}):\n\n"));
        return text.Append(Invariant($"<!-- snippet: {example.Name} -->\n```csharp\n{example.Text}\n```\n\n")).ToString();
    }

    /// <summary>
    /// How code names a type: as a type stands, so not behind a dot, and neither the name of a property that is set nor that of an argument.
    /// Extension methods name the class that holds them, where no other type has a method of that name.
    /// </summary>
    private Regex Named(Type type)
    {
        string name = Regex.Escape(type.FullName![(type.Namespace!.Length + 1)..].Replace('+', '.').Split('`')[0]);
        string named = type.IsGenericTypeDefinition ? $@"(?<![\w.]){name}<" : $@"(?<![\w.]){name}(?![\w<])(?!\s*(?:=[^=>]|:))";
        IEnumerable<string> extensions = type.GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.IsDefined(typeof(ExtensionAttribute)) && byMethod[m.Name].Distinct().Count() == 1).Select(m => m.Name).Distinct();
        return new Regex(string.Join('|', extensions.Select(m => $@"\.{m}\(").Prepend(named)));
    }

    private static SourceFile? ShowingPage(IEnumerable<SourceFile> pages, string region) =>
        pages.Where(p => p.Text.Contains($"<!-- snippet: {region} -->", StringComparison.Ordinal)).MinBy(p => p.Path, StringComparer.Ordinal);

    private static string Title(SourceFile page) => Heading().Match(page.Text).Groups[1].Value;

    private static string Uid(Type type) => DocId.Of(type)["T:".Length..];

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    [GeneratedRegex("^# (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(?:using [\w.]+;\n)+\n")]
    private static partial Regex Usings();

    private sealed record Example(string Name, string Text, string Code, SourceFile? Page)
    {
        /// <summary>Length of the text, without the <c>using</c> lines on top of it.</summary>
        public int Lines => Usings().Replace(Text, "").Count('\n') + 1;
    }
}
