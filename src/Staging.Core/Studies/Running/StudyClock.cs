namespace Staging.Core.Studies;

/// <summary>Reports progress at most two hundred times, with the time left estimated from the rate so far.</summary>
internal sealed class StudyClock(long total, TimeProvider clock, IProgress<StudyProgress>? listener)
{
    private const int Reports = 200;

    private readonly long begun = clock.GetTimestamp();
    private long lastPart;

    /// <summary>The last report of a study that ends early: the cases done become the total.</summary>
    public void End(long done) => listener?.Report(StudyProgress.After(done, done, 0));

    public void Tell(long done)
    {
        long part = (long)((Int128)done * Reports / Math.Max(total, 1));
        if (listener is null || part == lastPart)
            return;
        lastPart = part;
        double elapsed = clock.GetElapsedTime(begun).TotalSeconds;
        listener.Report(StudyProgress.After(done, total, elapsed));
    }
}
