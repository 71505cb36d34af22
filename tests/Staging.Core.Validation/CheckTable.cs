using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Staging.Core.Validation;

[assembly: AssemblyFixture(typeof(CheckTable))]

namespace Staging.Core.Validation;

/// <summary>Writes every outside check of the run to one table that the documentation shows.</summary>
public sealed class CheckTable : IDisposable
{
    private static readonly ConcurrentBag<OutsideCheck> Entered = [];

    public static void Enter(OutsideCheck check) => Entered.Add(check);

    public void Dispose()
    {
        if (Root() is not { } root)
            return;
        string folder = Path.Combine(root, "docs", "validation");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "outside-checks.md"), Text());
    }

    private static string Text()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<!-- Written by the test run; do not edit. docs/checks.md shows it. -->\n\n{Entered.Count} outside checks in this run.\n");
        foreach (IGrouping<string, OutsideCheck> floor in Entered.GroupBy(c => c.Floor).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## {floor.Key}: {floor.Count()} checks\n\n");
            text.Append("| quantity | unit | expected | ours | deviation | allowed | source | how |\n|---|---|---|---|---|---|---|---|\n");
            foreach (OutsideCheck c in floor.OrderBy(c => c.Quantity, StringComparer.Ordinal))
                text.Append(CultureInfo.InvariantCulture, $"| {Cell(c.Quantity)} | {Cell(c.Unit)} | {c.Expected:G9} | {c.Ours:G9} | {Small(c)} | {c.Within.Absolute(c.Expected):0.0e0} | {Cell(Cite(c.Provenance))} | {How(c.Provenance.How)} |\n");
        }

        return text.ToString();
    }

    /// <summary>The deviation to one digit; round-off is not worth a changed file.</summary>
    private static string Small(OutsideCheck c) =>
        c.Deviation <= 1e-12 * Math.Max(Math.Abs(c.Expected), 1e-300) ? "round-off" : c.Deviation.ToString("0e0", CultureInfo.InvariantCulture);

    /// <summary>Text as it is, where a table of Markdown would read signs of its own into it.</summary>
    private static string Cell(string text) => string.Concat(text.Select(c => "|*_<`\\[]".Contains(c, StringComparison.Ordinal) ? $"\\{c}" : c.ToString()));

    private static string Cite(Provenance p) => p.Locator is null ? p.Source : $"{p.Source}, {p.Locator}";

    private static string How(Evidence e) => e switch
    {
        Evidence.SeenInSource => "seen in the source",
        Evidence.ComputedFromFormula => "computed from its formula",
        Evidence.FromMemory => "from memory",
        Evidence.CommonPractice => "common practice",
        _ => e.ToString(),
    };

    private static string? Root()
    {
        for (DirectoryInfo? d = new(AppContext.BaseDirectory); d is not null; d = d.Parent)
        {
            if (File.Exists(Path.Combine(d.FullName, "Staging.Core.sln")))
                return d.FullName;
        }

        return null;
    }
}
