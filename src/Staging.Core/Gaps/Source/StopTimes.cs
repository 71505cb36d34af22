namespace Staging.Core.Gaps;

/// <summary>
/// Times at which a source changes abruptly, known before the run: they are met exactly and never searched for.
/// </summary>
internal static class StopTimes
{
    /// <summary>The known times within the horizon [s], rising, the horizon last.</summary>
    public static double[] Of(GapParameters p)
    {
        var times = new SortedSet<double>();
        foreach (ChamberParameters c in p.Chambers)
        {
            times.Add(c.Start);
            times.Add(c.Start + c.OpeningTime);
            times.Add(c.KnownEnd);
            if (c.Pieces is { } pieces)
            {
                times.Add(pieces.FreshAt);
                times.Add(pieces.LostAt);
            }
        }

        if (p.Feed is { } feed)
        {
            foreach (double t in feed.Times)
                times.Add(t);
        }

        return [.. times.Where(t => t > 0 && t < p.Horizon), p.Horizon];
    }
}
