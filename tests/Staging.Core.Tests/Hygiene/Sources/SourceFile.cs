using System.Text.RegularExpressions;

namespace Staging.Core.Tests.Hygiene.Sources;

/// <summary>One source file: its path from the root of the checkout, and its text.</summary>
internal sealed partial record SourceFile(string Path, string Text)
{
    /// <summary>The text without comments and without the contents of strings.</summary>
    public string Code { get; } = CodeText.Of(Text);

    /// <summary>The path of the folder.</summary>
    public string Folder => Path[..Path.LastIndexOf('/')];

    /// <summary>The name without folder, up to the first dot: <c>Guard</c> for <c>Guard.Quantities.cs</c>.</summary>
    public string Stem => Path[(Path.LastIndexOf('/') + 1)..].Split('.')[0];

    /// <summary>The name with its extensions.</summary>
    public string Name => Path[(Path.LastIndexOf('/') + 1)..];

    public int Lines => Text.AsSpan().TrimEnd().Count('\n') + 1;

    public string? Namespace => NamespaceLine().Match(Code) is { Success: true } m ? m.Groups[1].Value : null;

    /// <summary>Names of the types declared, nested ones included.</summary>
    public IEnumerable<string> Types => TypeLine().Matches(Code).Select(m => m.Groups[2].Value);

    /// <summary>Whether a type is declared that users of the package can see.</summary>
    public bool DeclaresPublicType => TypeLine().Matches(Code).Any(m => m.Groups[1].Value.Contains("public", StringComparison.Ordinal)
        && m.Groups[1].Length > 0 && IsTopLevel(m));

    /// <summary>Whether it declares static classes only.</summary>
    public bool IsStatic => TypeLine().Matches(Code) is { Count: > 0 } types
        && types.All(m => m.Groups[1].Value.Contains("static", StringComparison.Ordinal));

    private static bool IsTopLevel(Match m) => !char.IsWhiteSpace(m.Value[0]);

    [GeneratedRegex(@"^\s*namespace\s+([\w.]+)", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(
        @"^[ \t]*((?:(?:public|internal|private|protected|sealed|abstract|static|partial|readonly|ref|unsafe|file)[ \t]+)*)" +
        @"(?:class|struct|interface|enum|record(?:[ \t]+(?:class|struct))?|delegate[ \t]+[\w<>?,\[\] .]+?)[ \t]+(\w+)",
        RegexOptions.Multiline)]
    private static partial Regex TypeLine();
}
