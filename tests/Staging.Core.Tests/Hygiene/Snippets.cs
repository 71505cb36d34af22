using System.Text.RegularExpressions;
using Staging.Core.Tests.Hygiene.Sources;

namespace Staging.Core.Tests.Hygiene;

/// <summary>
/// Code shown to readers is code that runs: a fenced block of C#, C or Python below a line <c>snippet: name</c> equals the region of that
/// name in a sample or a test. Regions of one name in one file make one block, so that its <c>using</c> lines can come first.
/// Blocks without a name are refused.
/// </summary>
internal static partial class Snippets
{
    /// <summary>
    /// Regions of a source file by name, the common indentation taken off; those of one name with a blank line between.
    /// </summary>
    public static IEnumerable<KeyValuePair<string, string>> Regions(SourceFile file) =>
        from Match m in Region().Matches(file.Text)
        group Dedented(m.Groups["body"].Value) by m.Groups["name"].Value.Trim() into parts
        select KeyValuePair.Create(parts.Key, string.Join("\n\n", parts));

    /// <summary>What is wrong with the blocks of one page.</summary>
    public static IEnumerable<string> Wrong(SourceFile page, ILookup<string, string> regions)
    {
        foreach (Match block in Block().Matches(page.Text.ReplaceLineEndings("\n")))
        {
            string name = block.Groups["name"].Value;
            string[] sources = [.. regions[name]];
            if (name.Length == 0)
                yield return $"{page.Path}: a block without a snippet name: {FirstLine(block)}";
            else if (sources.Length != 1)
                yield return $"{page.Path}: snippet {name} is defined {sources.Length} times";
            else if (block.Groups["body"].Value.TrimEnd() != sources[0])
                yield return $"{page.Path}: snippet {name} differs from its region; it should read\n{sources[0]}";
        }
    }

    private static string FirstLine(Match block) => block.Groups["body"].Value.Split('\n')[0];

    private static string Dedented(string body)
    {
        string[] lines = body.ReplaceLineEndings("\n").Trim('\n').TrimEnd().Split('\n');
        int indent = lines.Where(l => l.Trim().Length > 0).Select(l => l.Length - l.TrimStart().Length).DefaultIfEmpty(0).Min();
        return string.Join('\n', lines.Select(l => l.Length >= indent ? l[indent..].TrimEnd() : ""));
    }

    [GeneratedRegex(@"^[ \t]*(?:/\* )?# ?region (?<name>[^\r\n*]+)(?:\*/)?\r?\n(?<body>.*?)^[ \t]*(?:/\* )?# ?endregion", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Region();

    [GeneratedRegex(@"(?:<!-- snippet: (?<name>[\w-]+) -->\n+)?^```(?:csharp|cs|c#|c|python)(?: [^\n]*)?\n(?<body>.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
