using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Runs reliability studies, and merges their parts.</summary>
internal static class Reliability
{
    /// <summary>
    /// Cases that a thread takes at a time: enough to hide the scheduling cost, few enough to balance a slow
    /// model.
    /// </summary>
    private const int BlockSize = 16;

    /// <summary>Cases between two checks of the stop rule.</summary>
    private const int StopInterval = 64;

    public static ReliabilityRun Run<T, TResult>(ReliabilityStudy<T, TResult> study, StudyOptions options,
        IProgress<StudyProgress>? progress, CancellationToken cancellationToken)
    {
        InvalidModelException.ThrowOnError(study.Check());
        if (study.Stop is not null && options.Part.Count > 1)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU006", nameof(study.Stop),
                "A part does not know the other parts, so it cannot stop early; run the parts in full.")]);
        var design = new SampleDesign(study.Design, study.Cases, study.Inputs.Inputs.Length, study.Seed);
        long first = options.Part.First(study.Cases), end = options.Part.End(study.Cases);
        if (study.KeepCases)
            StudySize.Check(end - first, NumbersKept(study.Inputs.Inputs.Length, study.Measures.Length));
        cancellationToken.ThrowIfCancellationRequested();
        var tally = new CaseTally(study.Measures.Length, study.KeepCases);
        var clock = new StudyClock(end - first, options.Clock, progress);
        bool satisfied = false;

        OrderedBlocks.Run(first, end, BlockSize, options.Threads, (from, to, cancel) => Block(study, design, from, to, cancel), Take,
            cancellationToken);
        if (satisfied)
            clock.End(tally.Cases);
        return new ReliabilityRun(Heading(study, design), CaseRange.Joined([new CaseRange(first, satisfied ? first + tally.Cases : end)]),
            satisfied, tally);

        bool Take(CaseRow[] rows, long past)
        {
            foreach (CaseRow row in rows)
            {
                tally.Add(row);
                if (study.Stop is { } rule && tally.Cases % StopInterval == 0 && tally.Cases >= rule.MinCases && IsMet(rule, tally))
                {
                    satisfied = true;
                    return false;
                }
            }

            clock.Tell(past - first);
            return true;
        }
    }

    public static ReliabilityRun Merge(ImmutableArray<ReliabilityRun> parts)
    {
        StudyHeading heading = StudyHeading.Common(parts, p => p.Heading);
        if (parts.Length > 1 && parts.Any(p => p.StoppedEarly))
            throw new ArgumentException("A study that stopped early is complete: there is nothing to merge it with.", nameof(parts));
        ImmutableArray<CaseRange> ranges = CaseRange.Joined(parts.SelectMany(p => p.Ranges));
        bool keep = parts.All(p => p.Tally.Columns is not null);
        if (keep)
            StudySize.Check(ranges.Sum(r => r.End - r.First), NumbersKept(heading.Inputs.Length, heading.Measures.Length));
        var tally = new CaseTally(heading.Measures.Length, keep);
        foreach (ReliabilityRun part in parts.OrderBy(p => p.Ranges.FirstOrDefault().First))
            tally.Add(part.Tally);
        return new ReliabilityRun(heading, ranges, parts[0].StoppedEarly, tally);
    }

    /// <summary>
    /// Numbers, 8 bytes each, that a kept case takes: its values, measures that may be absent, and its frame.
    /// </summary>
    private static int NumbersKept(int inputs, int measures) => inputs + 2 * measures + 12;

    private static bool IsMet(StopRule rule, CaseTally tally) =>
        new Proportion(tally.Outcomes.GetValueOrDefault(rule.Outcome),
            tally.Cases).ClopperPearson(rule.Confidence).HalfWidth <= rule.HalfWidth;

    private static StudyHeading Heading<T, TResult>(ReliabilityStudy<T, TResult> study, SampleDesign design) => new(
        study.Cases, study.Seed, design.Kind.ToString(), study.Inputs.Names, study.Inputs.Spreads,
        [.. study.Measures.Select(m => m.Column)]);

    private static CaseRow[] Block<T, TResult>(ReliabilityStudy<T, TResult> study, SampleDesign design, long first, long end,
        CancellationToken cancel)
    {
        var rows = new CaseRow[end - first];
        for (long i = first; i < end; i++)
        {
            cancel.ThrowIfCancellationRequested();
            rows[i - first] = Case(study, i, study.Inputs.Values(design, i), cancel);
        }

        return rows;
    }

    private static CaseRow Case<T, TResult>(ReliabilityStudy<T, TResult> study, long index, double[] values, CancellationToken cancel)
    {
        TResult result;
        try
        {
            result = study.Model(study.Inputs.At(values), cancel);
        }
        catch (ArgumentException refusal)
        {
            return new CaseRow(index, values, ReliabilityRun.Refused, new double?[study.Measures.Length],
                refusal.Message.ReplaceLineEndings(" "));
        }

        ReadOnlySpan<Measure<TResult>> asked = study.Measures.AsSpan();
        double?[] measures = new double?[asked.Length];
        for (int m = 0; m < asked.Length; m++)
            measures[m] = Finite(asked[m], asked[m].Of(result), index);
        string outcome = study.Outcome(result) ?? throw new InvalidOperationException($"Case {index} has no outcome.");
        return new CaseRow(index, values, outcome, measures, null);
    }

    private static double? Finite<TResult>(Measure<TResult> measure, double? value, long index) =>
        value is { } x && !double.IsFinite(x)
            ? throw new ArithmeticException($"Measure \"{Excerpt.Of(measure.Name)}\" of case {index} is not a finite number.")
            : value;
}
