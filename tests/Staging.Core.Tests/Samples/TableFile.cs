using System.Globalization;

namespace Staging.Core.Tests.Samples;

/// <summary>A CSV file of numbers below a line of heads.</summary>
internal sealed class TableFile
{
    private readonly double[][] rows;

    private TableFile(string[] heads, double[][] rows) => (Heads, this.rows) = (heads, rows);

    public string[] Heads { get; }

    public double[] this[string head] => [.. rows.Select(r => r[Array.IndexOf(Heads, head)])];

    public static TableFile Read(string path)
    {
        string[] lines = File.ReadAllLines(path), heads = lines[0].Split(',');
        double[][] rows = [.. lines.Skip(1).Select(l => l.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray())];
        Assert.All(rows, r => Assert.Equal(heads.Length, r.Length));
        Assert.All(heads, h => Assert.Matches(@"^[a-z ]+ \[[A-Za-z0-9/-]+\]$", h));
        return new TableFile(heads, rows);
    }
}
