namespace Samples;

/// <summary>
/// A page of Markdown that shows tables: each below a line <c>table: NAME</c> in a comment, up to the next blank line.
/// </summary>
internal static class Page
{
    /// <summary>
    /// Answers a command line: nothing prints the tables, <c>--check FILE...</c> tells whether the pages hold them (0
    /// yes, 1 no), <c>--write FILE</c> brings a page up to date.
    /// </summary>
    /// <returns>The exit code; 2 for a command line that is none of these, or a page that is not there.</returns>
    public static int Answer(string[] args, IReadOnlyDictionary<string, string[]> tables)
    {
        switch (args)
        {
            case []:
                Console.WriteLine(string.Join("\n\n", tables.Values.Select(t => string.Join('\n', t))));
                return 0;
            case ["--check", _, ..] when args.Skip(1).All(File.Exists):
                bool[] held = [.. args.Skip(1).Select(path => Check(path, tables))];
                return held.All(h => h) ? 0 : 1;
            case ["--write", string path] when File.Exists(path):
                File.WriteAllText(path, With(File.ReadAllText(path), tables));
                return 0;
            default:
                Console.Error.WriteLine("error: [--check FILE... | --write FILE] is what can be asked, and the files must exist.");
                return 2;
        }
    }

    private static bool Check(string path, IReadOnlyDictionary<string, string[]> tables)
    {
        string page = File.ReadAllText(path), now = With(page, tables);
        foreach (string line in now.Split('\n').Except(page.Split('\n')))
            Console.WriteLine($"{path} should say: {line}");
        Console.WriteLine(now == page ? $"{path} holds the tables" : $"{path} is out of step with the library; --write brings it up to date");
        return now == page;
    }

    /// <summary>
    /// The page with every table as it is now; a table without its comment is put at the end, where it is noticed.
    /// </summary>
    private static string With(string page, IReadOnlyDictionary<string, string[]> tables)
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
