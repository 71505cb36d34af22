using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Runs a function of the number of a point at all of them, in parallel, and keeps the results in order.</summary>
internal static class Points
{
    public static ImmutableArray<TResult> Run<TResult>(
        long count, Func<long, CancellationToken, TResult> run, StudyOptions? options, Action<StudyProgress>? progress, CancellationToken cancel)
    {
        options ??= StudyOptions.Default;
        if (options.Shard.Parts > 1)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU007", nameof(options.Shard), "Only reliability studies run in parts; cut the axis, or run the whole.")]);
        var results = ImmutableArray.CreateBuilder<TResult>((int)count);
        var clock = new StudyClock(count, options.Clock, progress);
        OrderedBlocks.Run(
            0,
            count,
            size: 1,
            options.Threads,
            (i, _, stop) => run(i, stop),
            (result, past) =>
            {
                results.Add(result);
                clock.Tell(past);
                return true;
            },
            cancel);
        return results.MoveToImmutable();
    }
}
