using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// A study of many cases: how often each outcome occurs, and how the measures are distributed. It does not say how it
/// is run.
/// </summary>
/// <typeparam name="T">The model that is varied.</typeparam>
/// <typeparam name="TResult">The result of one case.</typeparam>
/// <remarks>
/// Immutable. The functions in it must be pure: they are called on any thread, and the same input must give the same
/// result. Equality of two studies compares their functions by reference.
/// </remarks>
public sealed record ReliabilityStudy<T, TResult>
{
    /// <summary>The model and what is uncertain in it.</summary>
    public required InputSet<T> Inputs { get; init => field = Guard.NotNull(value); }

    /// <summary>Runs one case.</summary>
    public required Func<T, CancellationToken, TResult> Model { get; init => field = Guard.NotNull(value); }

    /// <summary>Names the outcome of a case.</summary>
    public required Func<TResult, string> Outcome { get; init => field = Guard.NotNull(value); }

    /// <summary>Numbers to gather; none by default.</summary>
    public EquatableArray<Measure<TResult>> Measures { get; init; }

    /// <summary>Cases, 1 to 2^40.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required long Cases { get; init => field = (long)Guard.In((double)value, 1, 1L << 40); }

    /// <summary>The seed; the same seed gives the same cases.</summary>
    public ulong Seed { get; init; }

    /// <summary>How the cases are sampled; independent by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None of the designs.</exception>
    public DesignKind Design { get; init => field = Guard.Defined(value); }

    /// <summary>When to stop early; null to run all cases. Only for independent cases, and not for a part.</summary>
    public StopRule? Stop { get; init; }

    /// <summary>
    /// Whether to keep every case in columns: up to 16 777 216 cases at a time. Otherwise memory does not grow with the
    /// number of cases.
    /// </summary>
    public bool KeepCases { get; init; }

    /// <summary>All findings about the study.</summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        findings.AddRange(Measure<TResult>.Twice(Measures));
        if (Stop is not null && Design != DesignKind.Independent)
            findings.Add(new ModelFinding(FindingSeverity.Error, "STU004", nameof(Stop),
                "Only independent cases can stop early; the first cases of another design do not represent the whole."));
        if (Design == DesignKind.LowDiscrepancy && Inputs.Inputs.Length > SobolPoints.MaxDimensions)
            findings.Add(new ModelFinding(FindingSeverity.Error, "STU005", nameof(Design), $"The low-discrepancy design has "
                + $"{SobolPoints.MaxDimensions} dimensions, the study {Inputs.Inputs.Length} inputs; a Latin hypercube would fit."));
        return findings.ToImmutable();
    }

    /// <summary>Runs the cases, or those of a part alone.</summary>
    /// <param name="options">Threads and part; null for all cases on all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>The result: the same bits for any number of threads.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors, a part is asked to stop early, or
    /// more cases are to be kept than one machine keeps.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <exception cref="ArithmeticException">A measure is not a finite number.</exception>
    /// <exception cref="InvalidOperationException">A case has no outcome.</exception>
    /// <remarks>
    /// An <see cref="ArgumentException"/> of the model is a refused case, which is counted. Any other exception ends
    /// the study: the first in order of the cases is thrown.
    /// </remarks>
    public ReliabilityRun Run(StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default) =>
        Reliability.Run(this, options ?? StudyOptions.Default, progress, cancellationToken);
}
