namespace Staging.Core.Solving;

/// <summary>
/// The events of one phase, in time order, equal times in index order. Memory grows by doubling and is kept.
/// </summary>
internal sealed class FiredEvents
{
    private FiredEvent[] items = new FiredEvent[8];

    /// <summary>Number of events.</summary>
    public int Count { get; private set; }

    /// <summary>The events.</summary>
    public ReadOnlySpan<FiredEvent> All => items.AsSpan(0, Count);

    /// <summary>Discards all events.</summary>
    public void Clear() => Count = 0;

    /// <summary>Inserts an event in order.</summary>
    public void Insert(FiredEvent e)
    {
        if (Count == items.Length)
            Array.Resize(ref items, 2 * Count);
        int i = Count++;
        for (; i > 0 && Before(e, items[i - 1]); i--)
            items[i] = items[i - 1];
        items[i] = e;
    }

    /// <summary>
    /// Cuts the list behind an ending event at <paramref name="ending"/> [s]: later events are dropped, and all from
    /// <paramref name="ending"/> - <paramref name="tolerance"/> to <paramref name="ending"/> +
    /// <paramref name="tolerance"/> count as simultaneous: they take the latest of their times, and index order.
    /// </summary>
    /// <returns>The latest time among the simultaneous events [s].</returns>
    public double CutAt(double ending, double tolerance)
    {
        while (Count > 0 && items[Count - 1].Time > ending + tolerance)
            Count--;
        double latest = items[Count - 1].Time;
        int first = Count;
        while (first > 0 && items[first - 1].Time >= ending - tolerance)
            first--;
        int end = Count;
        Count = first;
        for (int i = first; i < end; i++)
            Insert(items[i] with { Time = latest });
        return latest;
    }

    private static bool Before(FiredEvent a, FiredEvent b) => a.Time < b.Time || (a.Time == b.Time && a.Index < b.Index);
}
