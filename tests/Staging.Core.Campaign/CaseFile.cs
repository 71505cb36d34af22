using System.Globalization;
using Staging.Core.Campaign.Drawing;
using Staging.Core.Campaign.Oracle;

namespace Staging.Core.Campaign;

/// <summary>
/// A kept case as text: lines that begin with # say what it once broke, the first other line is its kind, and each further one is a
/// value that is not the usual one.
/// </summary>
internal sealed record CaseFile(string Kind, IReadOnlyDictionary<string, double> Values)
{
    public Draws Draws => new(Values);

    public static CaseFile Read(string path)
    {
        string[] lines = [.. File.ReadLines(path).Select(l => l.Trim()).Where(l => l.Length > 0 && l[0] != '#')];
        if (lines.Length == 0)
            throw new FormatException($"{path}: there is no kind of case.");
        var values = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (string line in lines.Skip(1))
        {
            string[] parts = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (parts.Length != 2 || !double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
                throw new FormatException($"{path}: '{line}' is no name with a number.");
            values[parts[0]] = value;
        }

        return new CaseFile(lines[0], values);
    }

    public void Write(string path, Fault fault, string found)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllLines(path, [
            $"# {fault.Kind}: {fault.Detail}",
            $"# {found}",
            Kind,
            .. Values.OrderBy(v => v.Key, StringComparer.Ordinal)
                .Select(v => string.Create(CultureInfo.InvariantCulture, $"{v.Key} {v.Value:R}")),
        ]);
    }
}
