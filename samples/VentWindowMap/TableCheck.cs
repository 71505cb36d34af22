using System.Globalization;
using Staging.Core.Studies;

namespace VentWindowMap;

/// <summary>The words of the table, and whether a page that shows it still says the same.</summary>
internal static class TableCheck
{
    public static string Say(WindowResult result) => result.Windows.IsEmpty ? "none" : string.Join("; ", result.Windows.Select(Edges));

    /// <summary>
    /// Compares the rows of a page with two maps, of which the second may have fewer lengths, and with single answers.
    /// </summary>
    /// <returns>Number of cells that differ.</returns>
    public static int Of(string file, SweepLine<WindowResult> nominal, SweepLine<WindowResult> assured,
        (string Question, WindowResult Answer)[] asked)
    {
        ILookup<string, string[]> rows = File.ReadLines(file).Where(l => l.StartsWith("| ", StringComparison.Ordinal))
            .Select(l => l.Split('|', StringSplitOptions.TrimEntries)).ToLookup(c => c[1]);
        int wrong = Compare(rows, nominal, 2) + Compare(rows, assured, 3) + asked.Count(a => Differs(rows, a.Question, 2, Say(a.Answer)));
        Console.WriteLine(wrong == 0 ? $"{file} holds the map" : $"{file}: {wrong} cells differ");
        return wrong;
    }

    private static int Compare(ILookup<string, string[]> rows, SweepLine<WindowResult> map, int column)
    {
        int wrong = 0;
        for (int i = 0; i < map.Axis.Values.Length; i++)
        {
            if (Differs(rows, map.Axis.Values[i].ToString("F0", CultureInfo.InvariantCulture), column, Say(map.Results[i])))
                wrong++;
        }

        return wrong;
    }

    private static bool Differs(ILookup<string, string[]> rows, string row, int column, string now)
    {
        string shown = rows[row].FirstOrDefault()?.ElementAtOrDefault(column) ?? "no such row";
        if (shown == now)
            return false;
        Console.WriteLine($"{row}: the page says '{shown}', the library '{now}'");
        return true;
    }

    private static string Edges(Window w) =>
        $"{(w.LowIsEndOfSearch ? "below " : "")}{w.Low:F0} to {(w.HighIsEndOfSearch ? "above " : "")}{w.High:F0}";
}
