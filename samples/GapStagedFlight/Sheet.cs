namespace GapStagedFlight;

/// <summary>
/// Plain text on a page of fixed width: headings, rows of a name, a number with its unit and a remark, and wrapped
/// prose.
/// </summary>
internal sealed class Sheet(TextWriter to)
{
    private const int Width = 118;
    private const int NameWidth = 26;
    private const int NumberWidth = 8;

    public void Line(string text = "") => to.WriteLine(text);

    public void Heading(string text)
    {
        to.WriteLine();
        to.WriteLine(text);
    }

    /// <summary>A number with its unit, and what is to be said of it.</summary>
    public void Row(string name, double value, string format, string unit, string remark = "") =>
        Wrapped($"  {name.PadRight(NameWidth)}{value.ToString(format, null),NumberWidth} {unit.PadRight(4)} ", remark);

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
            if (!fresh && line.Length + word.Length + 1 > Width)
            {
                to.WriteLine(line);
                line = new string(' ', indent);
                fresh = true;
            }

            line += fresh ? word : " " + word;
            fresh = false;
        }

        to.WriteLine(line.TrimEnd());
    }
}
