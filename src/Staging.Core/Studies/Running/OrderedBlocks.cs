using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Staging.Core.Studies;

/// <summary>
/// Computes blocks of cases on several threads and hands them over in order on the calling thread. A fixed number of
/// blocks is under way at any time, so that memory does not grow with the number of cases.
/// </summary>
internal static class OrderedBlocks
{
    /// <summary>Blocks in progress or waiting for their turn.</summary>
    private const int Window = 64;

    /// <summary>Runs cases first ... end - 1 in blocks of <paramref name="size"/>.</summary>
    /// <param name="first">First case.</param>
    /// <param name="end">One past the last case.</param>
    /// <param name="size">Cases a block.</param>
    /// <param name="threads">Threads; null for as many as the runtime finds fitting.</param>
    /// <param name="compute">Computes a block from its first case and the one past its last; on any thread.</param>
    /// <param name="take">Takes a block, in order, on the calling thread, with the case past its last; false ends the
    /// run.</param>
    /// <param name="cancel">Stops the run.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static void Run<TBlock>(
        long first, long end, int size, int? threads, Func<long, long, CancellationToken, TBlock> compute, Func<TBlock, long, bool> take,
        CancellationToken cancel)
    {
        if (threads == 1 || end - first <= size)
        {
            for (long start = first; start < end; start += size)
            {
                cancel.ThrowIfCancellationRequested();
                long past = Math.Min(start + size, end);
                if (!take(compute(start, past, cancel), past))
                    return;
            }

            return;
        }

        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        using var room = new SemaphoreSlim(Window);
        using var done = new BlockingCollection<Finished<TBlock>>();
        Task work = Task.Run(() => Work(Starts(first, end, size, room, stop.Token), start => done.Add(Attempt(start,
            Math.Min(start + size, end), compute, stop.Token), CancellationToken.None), threads, done), CancellationToken.None);
        try
        {
            TakeInOrder(first, done, room, take);
        }
        catch (OperationCanceledException e) when (cancel.IsCancellationRequested)
        {
            throw new OperationCanceledException(e.Message, e, cancel);
        }
        finally
        {
            stop.Cancel();
            work.Wait(CancellationToken.None);
        }

        cancel.ThrowIfCancellationRequested();
    }

    private static void Work<TBlock>(IEnumerable<long> starts, Action<long> block, int? threads, BlockingCollection<Finished<TBlock>> done)
    {
        try
        {
            var options = new ParallelOptions { MaxDegreeOfParallelism = threads ?? -1 };
            Parallel.ForEach(Partitioner.Create(starts, EnumerablePartitionerOptions.NoBuffering), options, block);
        }
        finally
        {
            done.CompleteAdding();
        }
    }

    private static IEnumerable<long> Starts(long first, long end, int size, SemaphoreSlim room, CancellationToken stop)
    {
        for (long start = first; start < end; start += size)
        {
            try
            {
                room.Wait(stop);
            }
            catch (OperationCanceledException)
            {
                yield break;
            }

            yield return start;
        }
    }

    /// <summary>
    /// A block, or what went wrong in it: thrown when its turn comes, so that the first in order is the one reported.
    /// </summary>
    private static Finished<TBlock> Attempt<TBlock>(long start, long past, Func<long, long, CancellationToken, TBlock> compute,
        CancellationToken stop)
    {
        try
        {
            return new Finished<TBlock>(start, past, compute(start, past, stop), null);
        }
#pragma warning disable CA1031 // Whatever it is, it is thrown again, on the calling thread.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return new Finished<TBlock>(start, past, default, ExceptionDispatchInfo.Capture(fault));
        }
    }

    private static void TakeInOrder<TBlock>(long first, BlockingCollection<Finished<TBlock>> done, SemaphoreSlim room,
        Func<TBlock, long, bool> take)
    {
        long next = first;
        var early = new Dictionary<long, Finished<TBlock>>();
        foreach (Finished<TBlock> arrived in done.GetConsumingEnumerable())
        {
            early.Add(arrived.Start, arrived);
            while (early.Remove(next, out Finished<TBlock> turn))
            {
                turn.Fault?.Throw();
                if (!take(turn.Block!, turn.Past))
                    return;
                next = turn.Past;
                room.Release();
            }
        }
    }

    private readonly record struct Finished<TBlock>(long Start, long Past, TBlock? Block, ExceptionDispatchInfo? Fault);
}
