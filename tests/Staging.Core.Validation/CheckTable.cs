using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using Staging.Core.Validation;

[assembly: AssemblyFixture(typeof(CheckTable))]

namespace Staging.Core.Validation;

/// <summary>
/// Writes every outside check to one table that the documentation shows. The table is kept with the sources, so it says
/// the same on any machine: our number to the digit in which it may differ, and at most nine digits of anything.
/// </summary>
public sealed class CheckTable : IDisposable
{
    private const string Head = "| quantity |";

    private static readonly ConcurrentBag<OutsideCheck> Entered = [];

    public static void Enter(OutsideCheck check) => Entered.Add(check);

    public void Dispose()
    {
        if (Root() is not { } root)
            return;
        string path = Path.Combine(root, "docs", "validation", "outside-checks.md");
        // A run of some tests alone leaves the table as it is.
        if (File.Exists(path) && Entered.Count < File.ReadLines(path).Count(l => l.StartsWith("| ", StringComparison.Ordinal) && !l.StartsWith(Head, StringComparison.Ordinal)))
            return;
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, Text());
    }

    private static string Text()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<!-- Written by the test run; do not edit. docs/checks.md shows it. -->\n\n{Entered.Count} outside checks.\n");
        foreach (IGrouping<string, OutsideCheck> floor in Entered.GroupBy(c => c.Floor).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## {floor.Key}: {floor.Count()} checks\n\n");
            text.Append(Head).Append(" unit | expected | ours | allowed | source | how |\n|---|---|---|---|---|---|---|\n");
            text.AppendJoin("", floor.Select(Row).Order(StringComparer.Ordinal));
        }

        return text.ToString();
    }

    private static string Row(OutsideCheck c) => string.Create(
        CultureInfo.InvariantCulture,
        $"| {Cell(c.Quantity)} | {Cell(c.Unit)} | {c.Expected:G9} | {Ours(c)} | {c.Within.Absolute(c.Expected):0.0e0} | {Cell(Cite(c.Provenance))} | {How(c.Provenance.How)} |\n");

    /// <summary>Our number down to the decade below what is allowed: what lies below may depend on the processor.</summary>
    private static string Ours(OutsideCheck c)
    {
        double digits = Math.Floor(Math.Log10(Math.Abs(c.Ours))) - Math.Floor(Math.Log10(c.Within.Absolute(c.Expected))) + 1;
        return !(digits >= 1) ? "0" : c.Ours.ToString($"G{Math.Min(9, digits):F0}", CultureInfo.InvariantCulture);
    }

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
