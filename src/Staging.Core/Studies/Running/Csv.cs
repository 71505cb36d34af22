using System.Globalization;

namespace Staging.Core.Studies;

/// <summary>Cells of comma-separated values.</summary>
internal static class Csv
{
    /// <summary>A number in round-trip form; empty where there is none.</summary>
    public static string Cell(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    /// <summary>Name and unit as the head of a column; a unit may hold what has to be quoted.</summary>
    public static string Head(ColumnName name) => Cell(name.ToString());

    /// <summary>A text, in quotes where it holds a comma, a quote or a line end.</summary>
    public static string Cell(string text) =>
        text.AsSpan().IndexOfAny(",\"\r\n") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
