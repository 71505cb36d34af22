using System.Net;
using System.Text;
using GapStagedFlight.Figures;
using Staging.Core.Reviews;

namespace GapStagedFlight.Files;

/// <summary>A review as one page with its figures inside: it asks for nothing else, prints, and follows light and dark.</summary>
internal static class HtmlPage
{
    private const string Style = """
        :root { color-scheme: light dark; --paper: #fff; --ink: #1b1b1b; --line: #ccc; }
        @media screen and (prefers-color-scheme: dark) {
          :root { --paper: #161616; --ink: #e8e8e8; --line: #555; }
          figure svg { filter: invert(1) hue-rotate(180deg); }
        }
        body { margin: 0 auto; max-width: 62rem; padding: 1rem; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; }
        h1 { font-size: 1.6rem; line-height: 1.25; }
        h2 { margin-top: 2rem; border-bottom: 1px solid var(--line); font-size: 1.2rem; }
        .verdict { font-size: 1.2rem; font-weight: 600; }
        pre, .lines { font: 0.85rem/1.4 ui-monospace, monospace; }
        pre { overflow-x: auto; }
        .lines p { margin: 0; white-space: pre-wrap; overflow-wrap: break-word; }
        .lines p { padding-left: calc(var(--hang) * 1ch); text-indent: calc((var(--indent) - var(--hang)) * 1ch); }
        .lines b { font-weight: inherit; }
        @media screen and (max-width: 48rem) {
          .lines p { --hang: calc(var(--indent) + 2) !important; margin-top: 0.3rem; white-space: normal; }
          .lines b { font-weight: 700; }
        }
        figure { margin: 1.5rem 0; break-inside: avoid; }
        figure svg { display: block; width: 100%; height: auto; }
        @media print { body { max-width: none; padding: 0; } pre, .lines { font-size: 8pt; } pre { white-space: pre-wrap; } h2 { break-after: avoid; } }
        """;

    public static string Of(StagingReview review)
    {
        // Lines as long as they are: the page breaks them where its screen ends.
        string[] sections = Plain.Text(review.ToString(1000)).Split("\n\n");
        string[] first = sections[0].Split('\n');
        int verdict = 1 + first.Skip(2).TakeWhile(l => l.StartsWith("    ", StringComparison.Ordinal)).Count();
        var page = new StringBuilder();
        page.Append($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <title>{Text(first[0])}</title>
            <style>
            {Style}
            </style>
            </head>
            <body>
            <main>
            <h1>{Text(first[0])}</h1>
            <p class="verdict">{Text(string.Join(' ', first.Skip(1).Take(verdict).Select(l => l.Trim())))}</p>

            """);
        page.Append(Lines(first.Skip(1 + verdict)));
        foreach (string section in sections.Skip(1))
        {
            string[] lines = section.Split('\n');
            // The heading of a table names its columns as well; they stay above their columns.
            int name = lines[0].IndexOf("  ", StringComparison.Ordinal);
            page.Append(name < 0
                ? $"<h2>{Text(lines[0])}</h2>\n{Lines(lines.Skip(1))}"
                : $"<h2>{Text(lines[0][..name])}</h2>\n{Table([new string(' ', name) + lines[0][name..], .. lines.Skip(1)])}");
        }

        page.Append("<h2>Figures</h2>\n");
        foreach ((string name, DrawnFigure figure) in ReviewFigures.Of(review))
        {
            using (figure)
                page.Append($"<figure>\n{InlineSvg.Of(figure, name)}\n</figure>\n");
        }

        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Table(IEnumerable<string> lines) => $"<pre>{Text(string.Join('\n', lines))}</pre>\n";

    private static string Lines(IEnumerable<string> lines) =>
        string.Concat(lines.Select(Line)) is { Length: > 0 } text ? $"<div class=\"lines\">\n{text}</div>\n" : "";

    /// <summary>
    /// One line of the review. What does not fit hangs below its value, where there is a name before it, or a little
    /// further in; on a narrow screen always so.
    /// </summary>
    private static string Line(string line)
    {
        string words = line.TrimStart(' ');
        int indent = line.Length - words.Length, gap = words.IndexOf("  ", StringComparison.Ordinal);
        int hang = gap < 0 ? indent + 4 : line.Length - words[gap..].TrimStart(' ').Length;
        string shown = gap < 0 ? Text(words) : $"<b>{Text(words[..gap])}</b>{Text(words[gap..])}";
        return FormattableString.Invariant($"<p style=\"--indent: {indent}; --hang: {hang}\">{shown}</p>\n");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
