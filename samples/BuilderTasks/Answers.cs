using System.Text.RegularExpressions;

namespace BuilderTasks;

/// <summary>What the lines print, and the pages that show it: in a fenced block below a comment <c>answer: NAME</c>.</summary>
internal static partial class Answers
{
    /// <summary>What an action prints, without the blank at its end.</summary>
    public static string Printed(Action action)
    {
        TextWriter console = Console.Out;
        using var text = new StringWriter { NewLine = "\n" };
        Console.SetOut(text);
        try
        {
            action();
        }
        finally
        {
            Console.SetOut(console);
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>Checks or writes all pages below a folder, and tells of each that shows an answer.</summary>
    /// <returns>1 where a page is out of step, or an answer stands on no page; else 0.</returns>
    public static int Pages(string docs, IReadOnlyDictionary<string, string> answers, bool write)
    {
        var shown = new HashSet<string>(StringComparer.Ordinal);
        int code = 0;
        foreach (string path in Directory.EnumerateFiles(docs, "*.md", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            string page = File.ReadAllText(path);
            string now = Block().Replace(page, m =>
            {
                string name = m.Groups["name"].Value;
                shown.Add(name);
                return answers.TryGetValue(name, out string? answer) ? $"{m.Groups["head"].Value}{answer}\n```" : m.Value;
            });
            if (now == page)
                continue;
            if (write)
                File.WriteAllText(path, now);
            else
                code = 1;
            Console.WriteLine(write ? $"{path} written" : $"{path} is out of step with the library; --write brings it up to date");
        }

        foreach (string name in answers.Keys.Except(shown))
        {
            Console.WriteLine($"no page shows the answer {name}");
            code = 1;
        }

        if (code == 0)
            Console.WriteLine($"the pages show all {answers.Count} answers");
        return code;
    }

    [GeneratedRegex(@"(?<head><!-- answer: (?<name>[\w-]+) -->\n```\w*\n).*?^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
