using System.Diagnostics;
using System.Globalization;
using Staging.Core.Campaign.Oracle;
using Staging.Core.Campaign.Subjects;

namespace Staging.Core.Campaign;

/// <summary>
/// Makes a failing case smaller while it fails in the same way: values go back to the usual ones, in halves, quarters and one by one
/// (A. Zeller and R. Hildebrandt, IEEE Trans. Software Eng. 28 (2002) 183-200), and those that stay lose their digits.
/// </summary>
internal sealed class Shrinking(ISubject subject, Func<Facts, bool> fails, bool twice)
{
    private const int MostTrials = 400;

    /// <summary>Time after which what is smallest by then is kept [s].</summary>
    private const double Longest = 40;

    private readonly long begun = Stopwatch.GetTimestamp();
    private int trials;

    private bool IsOver => trials >= MostTrials || Stopwatch.GetElapsedTime(begun).TotalSeconds > Longest;

    public Dictionary<string, double> Shrink(IReadOnlyDictionary<string, double> failing)
    {
        var values = new Dictionary<string, double>(failing, StringComparer.Ordinal);
        for (int parts = 2; !IsOver;)
        {
            string[] names = [.. values.Keys.Order(StringComparer.Ordinal)];
            if (names.Length == 0)
                break;
            int size = Math.Max(1, names.Length / parts);
            bool fewer = false;
            foreach (string[] some in names.Chunk(size))
                fewer |= Takes(values, Without(values, some));
            if (size == 1 && !fewer)
                break;
            parts = Math.Min(2 * parts, 2 * names.Length);
        }

        foreach (string name in values.Keys.ToArray())
        {
            for (int digits = 1; digits <= 4 && values.TryGetValue(name, out double value); digits++)
            {
                double rounded = double.Parse(value.ToString($"E{digits - 1}", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
                if (rounded == value || Takes(values, new Dictionary<string, double>(values, StringComparer.Ordinal) { [name] = rounded }))
                    break;
            }
        }

        return values;
    }

    private bool Takes(Dictionary<string, double> values, Dictionary<string, double> smaller)
    {
        if (IsOver)
            return false;
        trials++;
        if (!Fails(smaller))
            return false;
        values.Clear();
        foreach ((string name, double value) in smaller)
            values[name] = value;
        return true;
    }

    private bool Fails(IReadOnlyDictionary<string, double> values) =>
        fails(Trial.Of(subject, () => new Drawing.Draws(values), 0, twice).Facts);

    private static Dictionary<string, double> Without(Dictionary<string, double> values, string[] names) =>
        values.Where(v => !names.Contains(v.Key)).ToDictionary(v => v.Key, v => v.Value, StringComparer.Ordinal);
}
