using System.Globalization;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>The words of the table, and whether a page that shows it still says the same.</summary>
internal static class TableCheck
{
    public static string Say(WindowResult result) => result.Match(Say, _ => "none");

    public static string Say(WindowResult.Found found) => string.Join("; ", found.Windows.Select(Edges));

    /// <summary>Compares the rows of a page with two maps; the second may have fewer lengths.</summary>
    /// <returns>0 where all agree, 1 otherwise.</returns>
    public static int Of(string file, SweepLine<WindowResult> nominal, SweepLine<WindowResult> assured)
    {
        ILookup<string, string[]> rows = File.ReadLines(file).Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Select(l => l.Split('|', StringSplitOptions.TrimEntries)).ToLookup(c => c[1]);
        int wrong = Compare(rows, nominal, 2) + Compare(rows, assured, 3);
        Console.WriteLine(wrong == 0 ? $"{file} holds the map" : $"{file}: {wrong} cells differ");
        return wrong == 0 ? 0 : 1;
    }

    private static int Compare(ILookup<string, string[]> rows, SweepLine<WindowResult> map, int column)
    {
        int wrong = 0;
        for (int i = 0; i < map.Axis.Values.Length; i++)
        {
            string gap = map.Axis.Values[i].ToString("F0", CultureInfo.InvariantCulture), now = Say(map.Results[i]);
            string shown = rows[gap].FirstOrDefault()?.ElementAtOrDefault(column) ?? "no such row";
            if (shown == now)
                continue;
            Console.WriteLine($"{gap} mm: the page says '{shown}', the library '{now}'");
            wrong++;
        }

        return wrong;
    }

    private static string Edges(Window w) => $"{(w.LowIsEndOfSearch ? "below " : "")}{w.Low:F0} to {(w.HighIsEndOfSearch ? "above " : "")}{w.High:F0}";
}
