namespace Staging.Core.Tests;

/// <summary>Bytes that an action allocates on its thread.</summary>
/// <remarks>
/// The least of up to five times, each from the start: what the action itself allocates is in all of them. A collection that
/// other threads cause meanwhile counts the unused rest of this thread's buffer, up to 8 kB, as allocated too: seen in 229 of
/// 12,696 times beside three threads that allocate without a pause, in none of 8022 without them.
/// </remarks>
internal static class Allocated
{
    /// <summary>By an action that is the same each time; once more before, since the first time is compiled.</summary>
    public static long By(Action action) => By(() =>
    {
        action();
        return action;
    });

    /// <summary>By what is left to do after the preparation, which is not counted.</summary>
    public static long By(Func<Action> prepared)
    {
        long least = long.MaxValue;
        for (int time = 0; time < 5 && least > 0; time++)
        {
            Action action = prepared();
            long before = GC.GetAllocatedBytesForCurrentThread();
            action();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }
}
