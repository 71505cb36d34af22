using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// Runs a function of the number of a point at some or all of them, in parallel, and keeps the results in order.
/// </summary>
internal static class PointEvaluator
{
    /// <summary>All points of a study whose results stay in this process.</summary>
    public static ImmutableArray<TResult> All<TResult>(
        long count, Func<long, CancellationToken, TResult> run, StudyOptions? options, IProgress<StudyProgress>? progress,
        CancellationToken cancel)
    {
        RefusePart(options);
        return Run(new CaseRange(0, count), 1, run, options, progress, cancel);
    }

    public static void RefusePart(StudyOptions? options)
    {
        if (options?.Part.Count > 1)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU007", nameof(options.Part), "A part has no "
                + "answer of its own; run the parts by the method whose name ends in InParts and ask the merged run, or run the whole.")]);
    }

    /// <summary>Runs only the points of a range; each result holds a given number of numbers.</summary>
    public static ImmutableArray<TResult> Run<TResult>(
        CaseRange range, int numbers, Func<long, CancellationToken, TResult> run, StudyOptions? options,
        IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        options ??= StudyOptions.Default;
        cancel.ThrowIfCancellationRequested();
        long count = range.End - range.First;
        StudySize.Check(count, numbers);
        var results = ImmutableArray.CreateBuilder<TResult>((int)count);
        var clock = new StudyClock(count, options.Clock, progress);
        OrderedBlocks.Run(
            range.First,
            range.End,
            size: 1,
            options.Threads,
            (i, _, stop) => run(i, stop),
            (result, past) =>
            {
                results.Add(result);
                clock.Tell(past - range.First);
                return true;
            },
            cancel);
        return results.MoveToImmutable();
    }
}
