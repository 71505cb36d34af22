using System.Globalization;
using System.Text;

namespace Staging.Core.Reviews;

/// <summary>
/// Plain text of a given width: headings, rows of a name, a number with its unit and a remark, and wrapped prose.
/// </summary>
internal sealed class TextSheet(int width)
{
    private const int NameWidth = 26;
    private const int NumberWidth = 8;

    private readonly StringBuilder text = new();

    public void Line(string line) => text.Append(line).Append('\n');

    public void Heading(string heading)
    {
        if (text.Length > 0)
            text.Append('\n');
        Line(heading);
    }

    /// <summary>A number with its unit and a remark.</summary>
    public void Row(string name, double value, string format, string unit, string remark = "") =>
        Wrapped($"  {name.PadRight(NameWidth)}{value.ToString(format, CultureInfo.InvariantCulture),NumberWidth} {unit.PadRight(4)} ",
            remark);

    /// <summary>Words in place of a number.</summary>
    public void Row(string name, string words) => Wrapped($"  {name.PadRight(NameWidth)} ", words);

    /// <summary>
    /// Prose behind a beginning; further lines stand below the prose, or indented where the beginning is long.
    /// </summary>
    public void Wrapped(string beginning, string prose, int indent = NameWidth + 3)
    {
        string line = beginning;
        bool fresh = true;
        foreach (string word in prose.Split(' '))
        {
            if (!fresh && line.Length + word.Length + 1 > width)
            {
                Line(line);
                line = new string(' ', indent);
                fresh = true;
            }

            line += fresh ? word : " " + word;
            fresh = false;
        }

        Line(line.TrimEnd());
    }

    /// <summary>All lines; the last is not ended.</summary>
    public override string ToString() => text.ToString(0, Math.Max(0, text.Length - 1));
}
