using System.Collections.Concurrent;

namespace Staging.Core.Native;

/// <summary>
/// What callers hold: numbers, never addresses, so that one that was released, made up or mixed up is refused and
/// touches no memory. No number is given twice. What a call is working with stays alive until the call ends, even when
/// another thread releases it meanwhile.
/// </summary>
internal static class Handles
{
    private static readonly ConcurrentDictionary<nint, object> Held = new();

    private static long last;

    /// <summary>How many are held.</summary>
    public static int Count => Held.Count;

    /// <summary>Keeps an object until its handle is released.</summary>
    public static nint Keep(object thing)
    {
        nint handle = (nint)Interlocked.Increment(ref last);
        Held[handle] = thing;
        return handle;
    }

    /// <summary>What a handle stands for.</summary>
    /// <param name="handle">The handle.</param>
    /// <param name="name">Name of the argument, for the error.</param>
    /// <exception cref="BadHandleException">It stands for nothing, or for something else.</exception>
    public static T Get<T>(nint handle, string name)
        where T : class
    {
        if (!Held.TryGetValue(handle, out object? thing))
            throw new BadHandleException(handle == 0 ? $"{name} is NULL." : $"{name} is no handle, or was released.");
        return thing as T ?? throw new BadHandleException($"{name} is a handle of another kind: of a {Kind(thing)}.");
    }

    /// <summary>When a call is to stop; never, where the caller gave no handle.</summary>
    public static CancellationToken Token(nint stop) =>
        stop == 0 ? CancellationToken.None : Get<CancellationTokenSource>(stop, nameof(stop)).Token;

    /// <summary>Lets go of what a handle stands for.</summary>
    /// <exception cref="BadHandleException">It stands for nothing.</exception>
    public static void Release(nint handle)
    {
        if (!Held.TryRemove(handle, out _))
            throw new BadHandleException("handle is no handle, or was released before.");
    }

    private static string Kind(object thing) => thing switch
    {
        Plans.StagingPlan => "plan",
        Reviews.StagingReview => "review",
        Reviews.Odds => "study of odds",
        Table => "table",
        _ => "stop",
    };
}
