using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>Runs reliability studies, and merges their parts.</summary>
public static class Reliability
{
    /// <summary>
    /// The outcome of a case whose model refused its input (an <see cref="ArgumentException"/>): counted, never
    /// dropped.
    /// </summary>
    public const string Refused = "Refused";

    /// <summary>
    /// Cases that a thread takes at a time: enough to hide the handing over, few enough to share out a slow model
    /// evenly.
    /// </summary>
    private const int BlockSize = 16;

    /// <summary>Cases between two looks at the stop rule.</summary>
    private const int StopInterval = 64;

    /// <summary>Runs the cases of a study, or of a part of it.</summary>
    /// <typeparam name="T">The model that is varied.</typeparam>
    /// <typeparam name="TResult">What one case gives.</typeparam>
    /// <param name="study">The study.</param>
    /// <param name="options">Threads and part; null for all cases on all cores.</param>
    /// <param name="progress">Told how far it has come, in order, on this thread; null for silence.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>The result: the same bits for any number of threads.</returns>
    /// <exception cref="InvalidModelException"><see cref="ReliabilityStudy{T, TResult}.Check"/> reports errors, or a
    /// part is asked to stop early.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <exception cref="ArithmeticException">A measure is not a finite number.</exception>
    /// <remarks>
    /// An exception of the model other than <see cref="ArgumentException"/> ends the study: the first in order of the
    /// cases is thrown.
    /// </remarks>
    public static ReliabilityRun Run<T, TResult>(
        this ReliabilityStudy<T, TResult> study, StudyOptions? options = null, Action<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(study);
        options ??= StudyOptions.Default;
        InvalidModelException.ThrowOnError(study.Check());
        if (study.Stop is not null && options.Part.Count > 1)
            throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU006", nameof(study.Stop),
                "A part does not know the other parts, so it cannot stop early; run the parts in full.")]);
        var design = new SampleDesign(study.Design, study.Cases, study.Inputs.Inputs.Length, study.Seed);
        long first = options.Part.First(study.Cases), end = options.Part.End(study.Cases);
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

    /// <summary>Puts parts together; the parts may come in any order.</summary>
    /// <param name="parts">Parts of one study that do not overlap.</param>
    /// <returns>Their union: with all parts, the bits of the study run whole.</returns>
    /// <exception cref="ArgumentException">There is no part, one is null, they belong to different studies, two hold
    /// the same case, or one stopped early.</exception>
    public static ReliabilityRun Merge(params ImmutableArray<ReliabilityRun> parts)
    {
        StudyHeading heading = StudyHeading.Common(parts, p => p.Heading);
        if (parts.Length > 1 && parts.Any(p => p.StoppedEarly))
            throw new ArgumentException("A study that stopped early is a whole: there is nothing to merge it with.", nameof(parts));
        ImmutableArray<CaseRange> ranges = CaseRange.Joined(parts.SelectMany(p => p.Ranges));
        var tally = new CaseTally(heading.Measures.Length, parts.All(p => p.Tally.Columns is not null));
        foreach (ReliabilityRun part in parts.OrderBy(p => p.Ranges.FirstOrDefault().First))
            tally.Add(part.Tally);
        return new ReliabilityRun(heading, ranges, parts[0].StoppedEarly, tally);
    }

    private static bool IsMet(StopRule rule, CaseTally tally) =>
        new Proportion(tally.Outcomes.GetValueOrDefault(rule.Outcome),
            tally.Cases).ClopperPearson(rule.Confidence).HalfWidth <= rule.HalfWidth;

    private static StudyHeading Heading<T, TResult>(ReliabilityStudy<T, TResult> study, SampleDesign design) => new(
        study.Cases, study.Seed, design.Kind.ToString(), study.Inputs.Names, study.Inputs.Spreads,
        [.. study.Measures.Select(m => new ColumnName(m.Name, m.Unit))]);

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
            return new CaseRow(index, values, Refused, new double?[study.Measures.Length], refusal.Message.ReplaceLineEndings(" "));
        }

        double?[] measures = [.. study.Measures.Select(m => Finite(m, m.Of(result), index))];
        return new CaseRow(index, values, study.Outcome(result), measures, null);
    }

    private static double? Finite<TResult>(Measure<TResult> measure, double? value, long index) =>
        value is { } x && !double.IsFinite(x)
            ? throw new ArithmeticException($"Measure \"{measure.Name}\" of case {index} is not a finite number.")
            : value;
}
