using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Finds where along an axis something holds: brackets every change on the axis, then halves the bracket.</summary>
public static class WindowSearch
{
    /// <summary>Halvings after which a bracket is as narrow as doubles allow.</summary>
    private const int MostHalvings = 200;

    /// <summary>Finds the windows of a yes-or-no function.</summary>
    /// <param name="axis">Where to look. A window narrower than its step may be missed: its values are the scan.</param>
    /// <param name="edge">Width at which an edge counts as found: a length of the axis [Unit], or a factor less 1 [-] on an axis of factors; above 0.</param>
    /// <param name="holds">The question, of a value in the unit of the axis [Unit]; pure, and called on any thread.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="cancellationToken">Stops the search.</param>
    /// <returns>The windows found, or that there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The edge width is not above 0.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static WindowResult Find(
        Axis axis, double edge, Func<double, CancellationToken, bool> holds, StudyOptions? options = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(holds);
        Guard.Above(edge, 0, 1e300, "-", nameof(edge));
        ImmutableArray<bool> scan = Points.Run(axis.Values.Length, (i, cancel) => holds(axis.Values[(int)i], cancel), options, null, cancellationToken);
        ImmutableArray<Run> runs = [.. Runs(scan)];
        if (runs.IsEmpty)
            return new WindowResult.None { Axis = axis, Scan = scan };

        // Each edge is its own bracket, so they can be halved side by side.
        (double Holds, double Fails)[] brackets = [.. runs.SelectMany(run => Brackets(axis, run))];
        ImmutableArray<(double Holds, double Fails)> edges =
            Points.Run(brackets.Length, (i, cancel) => Halve(axis, edge, brackets[i].Holds, brackets[i].Fails, holds, cancel), options, null, cancellationToken);
        return new WindowResult.Found { Axis = axis, Scan = scan, Windows = [.. runs.Select((run, i) => WindowOf(axis, run, edges[2 * i], edges[2 * i + 1]))] };
    }

    private static Window WindowOf(Axis axis, Run run, (double Holds, double Fails) low, (double Holds, double Fails) high) => new()
    {
        Low = low.Holds,
        High = high.Holds,
        LowIsEndOfSearch = run.First == 0,
        HighIsEndOfSearch = run.Last == axis.Values.Length - 1,
    };

    /// <summary>Both edges of a run of yeses: the last yes and the no beside it. At the end of the axis there is no bracket: both are the end.</summary>
    private static IEnumerable<(double Holds, double Fails)> Brackets(Axis axis, Run run)
    {
        yield return (axis.Values[run.First], axis.Values[Math.Max(run.First - 1, 0)]);
        yield return (axis.Values[run.Last], axis.Values[Math.Min(run.Last + 1, axis.Values.Length - 1)]);
    }

    /// <summary>Keeps a yes on one side and a no on the other until they are close.</summary>
    private static (double Holds, double Fails) Halve(
        Axis axis, double edge, double yes, double no, Func<double, CancellationToken, bool> holds, CancellationToken cancel)
    {
        for (int i = 0; i < MostHalvings && IsWide(axis, edge, yes, no); i++)
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

        return (yes, no);
    }

    private static bool IsWide(Axis axis, double edge, double a, double b) =>
        axis.ByFactors ? Math.Max(a, b) > (1 + edge) * Math.Min(a, b) : Math.Abs(a - b) > edge;

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
