namespace GapRows;

/// <summary>
/// A page of Markdown that shows tables: each below a line <c>table: NAME</c> in a comment, up to the next blank line.
/// </summary>
internal static class Page
{
    /// <summary>
    /// The page with every table as it is now; a table without its comment is put at the end, where it is noticed.
    /// </summary>
    public static string With(string page, IReadOnlyDictionary<string, string[]> tables)
    {
        var lines = new List<string>(page.Split('\n'));
        foreach ((string name, string[] table) in tables)
        {
            string comment = $"<!-- table: {name} -->";
            int at = lines.IndexOf(comment);
            if (at < 0)
            {
                lines.AddRange([comment, ""]);
                at = lines.Count - 2;
            }

            int end = lines.FindIndex(at + 1, l => l.Trim().Length == 0);
            lines.RemoveRange(at + 1, (end < 0 ? lines.Count : end) - at - 1);
            lines.InsertRange(at + 1, table);
        }

        return string.Join('\n', lines);
    }
}
