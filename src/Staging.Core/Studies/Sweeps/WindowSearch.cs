using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// Finds where along an axis a condition holds: brackets every change on the axis, then halves the bracket.
/// </summary>
internal static class WindowSearch
{
    /// <summary>Halvings after which a bracket is as narrow as doubles allow.</summary>
    private const int MaxHalvings = 200;

    /// <summary>Finds; see <see cref="Sweep.Windows"/>.</summary>
    public static WindowResult Find(
        Axis axis, double width, Func<double, CancellationToken, bool> holds, StudyOptions? options = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(holds);
        Guard.Above(width, 0, 1e300, axis.ByFactors ? "-" : axis.Name.Unit, nameof(width));
        ImmutableArray<bool> scan = PointEvaluator.All(axis.Values.Length, (i, cancel) => holds(axis.Values[(int)i], cancel), options, null,
            cancellationToken);

        // Each change between neighbours is its own bracket, so they can be halved in parallel.
        int[] changes = [.. Enumerable.Range(0, scan.Length - 1).Where(i => scan[i] != scan[i + 1])];
        ImmutableArray<double> halved = PointEvaluator.All(changes.Length, (k, cancel) => EdgeAfter(changes[k], cancel), options, null,
            cancellationToken);
        double?[] edges = new double?[scan.Length - 1];
        for (int k = 0; k < changes.Length; k++)
            edges[changes[k]] = halved[k];
        return Result(axis, scan, [.. edges]);

        double EdgeAfter(int i, CancellationToken cancel) =>
            scan[i]
                ? Halve(axis, width, axis.Values[i], axis.Values[i + 1], holds, cancel)
                : Halve(axis, width, axis.Values[i + 1], axis.Values[i], holds, cancel);
    }

    /// <summary>The codec; see <see cref="Sweep.WindowCodec"/>.</summary>
    public static PartCodec<WindowResult> Codec(Axis axis)
    {
        ArgumentNullException.ThrowIfNull(axis);
        int n = axis.Values.Length;
        ColumnName[] scan = [.. Enumerable.Range(1, n).Select(i => new ColumnName($"holds {i}", "-"))];
        ColumnName[] edges = [.. Enumerable.Range(1, n - 1).Select(i => new ColumnName($"edge {i}", axis.Name.Unit))];
        return new PartCodec<WindowResult>(
            [.. scan, .. edges],
            found => [.. Along(axis, found).Scan.Select(holds => holds ? 1 : (double?)0), .. Edges(found)],
            numbers => Result(axis, [.. numbers.Take(n).Select(holds => holds == 1)], numbers[n..]))
        {
            Remark = $", windows of {axis}",
        };
    }

    /// <summary>The result from the answers on the axis and, between neighbours that differ, the edge.</summary>
    internal static WindowResult Result(Axis axis, ImmutableArray<bool> scan, ImmutableArray<double?> edges)
    {
        double Known(int i) => edges[i] ?? throw new ArgumentException(
            $"Values {i + 1} and {i + 2} of the axis differ, and the edge between them is absent.", nameof(edges));
        return new WindowResult(axis, scan, [.. Runs(scan).Select(run =>
        {
            bool lowIsEnd = run.First == 0, highIsEnd = run.Last == scan.Length - 1;
            return new Window(lowIsEnd ? axis.Low : Known(run.First - 1), lowIsEnd, highIsEnd ? axis.High : Known(run.Last), highIsEnd);
        })]);
    }

    /// <summary>The edges of a result between neighbours of its axis; null where neighbours agree.</summary>
    internal static ImmutableArray<double?> Edges(WindowResult result)
    {
        double?[] edges = new double?[result.Scan.Length - 1];
        foreach ((Run run, Window window) in Runs(result.Scan).Zip(result.Windows))
        {
            if (!window.LowIsEndOfSearch)
                edges[run.First - 1] = window.Low;
            if (!window.HighIsEndOfSearch)
                edges[run.Last] = window.High;
        }

        return [.. edges];
    }

    private static WindowResult Along(Axis axis, WindowResult found) => found.Axis == axis
        ? found
        : throw new ArgumentException($"The windows were searched on {found.Axis}, not on {axis}.", nameof(found));

    /// <summary>Halves the bracket between a yes and a no until they are close, and returns the yes.</summary>
    private static double Halve(
        Axis axis, double width, double yes, double no, Func<double, CancellationToken, bool> holds, CancellationToken cancel)
    {
        for (int i = 0; i < MaxHalvings && IsWide(axis, width, yes, no); i++)
        {
            cancel.ThrowIfCancellationRequested();
            double middle = axis.Middle(yes, no);
            if (middle.Equals(yes) || middle.Equals(no))
                break;
            if (holds(middle, cancel))
                yes = middle;
            else
                no = middle;
        }

        return yes;
    }

    private static bool IsWide(Axis axis, double width, double a, double b) =>
        axis.ByFactors ? Math.Max(a, b) > (1 + width) * Math.Min(a, b) : Math.Abs(a - b) > width;

    private static IEnumerable<Run> Runs(ImmutableArray<bool> scan)
    {
        for (int i = 0; i < scan.Length; i++)
        {
            if (!scan[i])
                continue;
            int first = i;
            while (i + 1 < scan.Length && scan[i + 1])
                i++;
            yield return new Run(first, i);
        }
    }

    private readonly record struct Run(int First, int Last);
}
