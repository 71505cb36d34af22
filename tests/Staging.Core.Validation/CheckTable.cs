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
        text.Append("# Outside checks\n\nWritten by the test run; do not edit. Each row compares a number of the library with one that somebody else\n");
        text.Append("published, or that follows in closed form from a published equation.\n");
        foreach (IGrouping<string, OutsideCheck> floor in Entered.GroupBy(c => c.Floor).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"\n## {floor.Key}: {floor.Count()} checks\n\n");
            text.Append("| quantity | unit | expected | ours | deviation | allowed | source | how |\n|---|---|---|---|---|---|---|---|\n");
            foreach (OutsideCheck c in floor.OrderBy(c => c.Quantity, StringComparer.Ordinal))
                text.Append(CultureInfo.InvariantCulture, $"| {c.Quantity} | {c.Unit} | {c.Expected:G9} | {c.Ours:G9} | {Small(c)} | {c.Within.Absolute(c.Expected):0.0e0} | {Cite(c.Source)} | {How(c.Source.How)} |\n");
        }

        return text.ToString();
    }

    /// <summary>The deviation to one digit; round-off is not worth a changed file.</summary>
    private static string Small(OutsideCheck c) =>
        c.Deviation <= 1e-12 * Math.Max(Math.Abs(c.Expected), 1e-300) ? "round-off" : c.Deviation.ToString("0e0", CultureInfo.InvariantCulture);

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
