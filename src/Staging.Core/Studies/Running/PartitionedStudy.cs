using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// A study whose answer is computed from numbers at the cases of a design. Any part of the cases can be run on any
/// machine; the answer needs all of them. Screening, variance shares, a tornado and sweeps each prepare one, with a
/// method that ends in <c>InParts</c>.
/// </summary>
/// <typeparam name="TAnswer">The answer computed from the numbers of all cases.</typeparam>
/// <remarks>
/// Immutable; may be used from any thread. Parts are compared by number of cases, seed, design, inputs, distributions
/// (kind and numbers, exactly) and measures. The model is a function and cannot be compared: run the same program on
/// every machine.
/// </remarks>
public sealed class PartitionedStudy<TAnswer>
{
    private readonly StudyHeading heading;
    private readonly bool someMayBeAbsent;
    private readonly Func<long, CancellationToken, ImmutableArray<double>> row;
    private readonly Func<ImmutableArray<ImmutableArray<double>>, TAnswer> answer;

    /// <param name="heading">What tells this study from others.</param>
    /// <param name="row">The numbers of a case; not-a-number stands for one that is absent.</param>
    /// <param name="answer">The answer from the numbers of all cases, in order.</param>
    /// <param name="someMayBeAbsent">Whether numbers may be absent, as those of a measure that a result does not
    /// have.</param>
    internal PartitionedStudy(StudyHeading heading, Func<long, CancellationToken, ImmutableArray<double>> row,
        Func<ImmutableArray<ImmutableArray<double>>, TAnswer> answer, bool someMayBeAbsent = false) =>
        (this.heading, this.row, this.answer, this.someMayBeAbsent) = (heading, row, answer, someMayBeAbsent);

    /// <summary>Cases of the whole.</summary>
    public long Cases => heading.Cases;

    /// <summary>Runs all cases, or those of a part alone.</summary>
    /// <param name="options">Threads and part; null for all cases on all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>The numbers: the same bits for any number of threads.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <exception cref="ArithmeticException">The model gave no finite number.</exception>
    /// <exception cref="InvalidModelException">More numbers than one machine keeps (STU016): more parts would
    /// fit.</exception>
    public PartResult Run(StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default)
    {
        StudyPart shard = options?.Part ?? StudyPart.Whole;
        var range = new CaseRange(shard.First(Cases), shard.End(Cases));
        return new PartResult(heading, CaseRange.Joined([range]),
            PointEvaluator.Run(range, heading.Measures.Length, Row, options, progress, cancellationToken));
    }

    /// <summary>The answer of a run that holds every case.</summary>
    /// <param name="run">A whole run, or all parts merged.</param>
    /// <returns>The answer: the bits of the study run whole.</returns>
    /// <exception cref="ArgumentException">The run belongs to another study, or cases or numbers are
    /// missing.</exception>
    public TAnswer Of(PartResult run)
    {
        ArgumentNullException.ThrowIfNull(run);
        if (heading.Differs(run.Heading) is { Length: > 0 } difference)
            throw new ArgumentException($"The run belongs to another study: this one and the run have {difference}.", nameof(run));
        if (!run.IsWhole)
            throw new ArgumentException($"Of the cases 0 to {Cases - 1} these are missing: {run.Missing}. Merge the parts that hold them.",
                nameof(run));
        return run.Numbered.Select(n => Flaw(n.Case, n.Row)).FirstOrDefault(flaw => flaw is not null) is { } flaw
            ? throw new ArgumentException(flaw, nameof(run))
            : answer(run.Rows);
    }

    /// <summary>The design, and the number of cases.</summary>
    /// <returns>For example <c>143 cases: screening on 8 levels</c>.</returns>
    public override string ToString() => Invariant.Text($"{Cases} cases: {heading.Design}");

    /// <summary>Runs all cases and gives the answer.</summary>
    internal TAnswer Whole(StudyOptions? options, IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        PointEvaluator.RefusePart(options);
        return Of(Run(options, progress, cancel));
    }

    private ImmutableArray<double> Row(long index, CancellationToken cancel)
    {
        ImmutableArray<double> numbers = row(index, cancel);
        return Flaw(index, numbers) is { } flaw ? throw new ArithmeticException(flaw) : numbers;
    }

    /// <summary>A sentence about the first number that is not finite; null when all are finite.</summary>
    private string? Flaw(long index, ImmutableArray<double> numbers)
    {
        for (int m = 0; m < numbers.Length; m++)
        {
            if (double.IsInfinity(numbers[m]) || (double.IsNaN(numbers[m]) && !someMayBeAbsent))
                return $"Measure \"{Excerpt.Of(heading.Measures[m].Name)}\" of case {index} is not a finite number.";
        }

        return null;
    }
}
