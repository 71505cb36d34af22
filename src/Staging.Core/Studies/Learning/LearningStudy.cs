using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// What observations say about the uncertain inputs of a model: the distributions of the inputs are what is believed
/// before, the likelihood of each observation weighs the cases, and the weighted cases are what is believed after.
/// </summary>
/// <typeparam name="T">The model.</typeparam>
/// <remarks>
/// Self-normalised importance sampling from the prior (J. S. Liu, Monte Carlo Strategies in Scientific Computing, 2001,
/// section 2.5) over a low-discrepancy design. The model is run once for each case, whatever is asked afterwards; of a
/// run nothing is kept but one log-likelihood for each observation. Immutable. The function must be pure: it is called
/// on any thread. Equality of two studies compares their functions by reference.
/// </remarks>
public sealed record LearningStudy<T>
{
    /// <summary>The model and what is uncertain in it: at most 40 inputs.</summary>
    public required InputSet<T> Inputs { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Names of the observations: letters, digits, dots, hyphens, underscores and inner spaces. Without any, what is
    /// believed after is what was believed before.
    /// </summary>
    /// <exception cref="ArgumentException">A name is blank or holds other characters.</exception>
    public required EquatableArray<string> Observations
    {
        get;
        init => field = [.. value.Select(name => InputPath.Checked(name))];
    }

    /// <summary>
    /// The logarithm of the likelihood of each observation, in their order, under one case [-]; negative infinity where
    /// the model calls an observation impossible. What the observations share is computed once in it.
    /// </summary>
    public required Func<T, CancellationToken, ImmutableArray<double>> LogLikelihoods { get; init => field = Guard.NotNull(value); }

    /// <summary>Cases, 2 to 16 777 216; powers of two are best.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Cases { get; init => field = Guard.In(value, 2, (int)StudySize.MaxPoints); }

    /// <summary>
    /// Model runs, about, 100 or more; null, the default, runs every case. With fewer runs than cases the first quarter
    /// of them tells which other cases are worth a run, and each that is run stands for some that are not: worth while
    /// where the observations leave few of many cases.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? Runs { get; init => field = value is { } n ? Guard.In(n, 100, (int)StudySize.MaxPoints) : null; }

    /// <summary>The seed; the same seed gives the same cases.</summary>
    public ulong Seed { get; init; }

    /// <summary>
    /// Least effective number of cases [-], 2 to 1 million. Where the observations leave fewer, all likelihoods are
    /// raised to one power below 1, which is stated. The default is 100: shares are then known to within 0.1. No more
    /// is asked than a tenth of the cases that are possible at all.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double EffectiveSample { get; init => field = Guard.In(value, 2, 1e6); } = 100;

    /// <summary>Further text that tells two studies apart, for parts; usually empty.</summary>
    internal string Remark { get; init; } = "";

    /// <summary>How the cases are sampled.</summary>
    internal SampleDesign Design => new(DesignKind.LowDiscrepancy, Cases, Inputs.Inputs.Length, Seed);

    /// <summary>All findings about the study.</summary>
    /// <returns>The findings; empty when there is nothing to say.</returns>
    public ImmutableArray<ModelFinding> Check()
    {
        var findings = ImmutableArray.CreateBuilder<ModelFinding>();
        foreach (string twice in Observations.GroupBy(name => name).Where(g => g.Count() > 1).Select(g => g.Key))
            findings.Add(new ModelFinding(FindingSeverity.Error, "STU002", twice, "Two observations have this name; give each its own."));
        if (Inputs.Inputs.Length > SobolPoints.MaxDimensions)
            findings.Add(new ModelFinding(FindingSeverity.Error, "STU005", nameof(Inputs), $"The low-discrepancy design has "
                + $"{SobolPoints.MaxDimensions} dimensions, the study {Inputs.Inputs.Length} inputs; hold those that matter least."));
        return findings.ToImmutable();
    }

    /// <summary>Runs every case once, or those that <see cref="Runs"/> leaves, and weighs them.</summary>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>What is believed after: the same bits for any number of threads.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors; no case fits the observations
    /// (STU017), or so few that no power of the likelihoods helps (STU018).</exception>
    /// <exception cref="ArithmeticException">A log-likelihood is not-a-number or positive infinity, or there is not one
    /// for each observation.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <remarks>
    /// An <see cref="ArgumentException"/> of the model is a case that cannot be: it has no weight, before or after, and
    /// is counted in <see cref="Posterior{T}.Refused"/>. Any other exception ends the study.
    /// </remarks>
    public Posterior<T> Learn(StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default) =>
        Given is { } given ? ChosenRuns.Of(this, given, options, progress, cancellationToken)
        : ChoosesRuns ? ChosenRuns.Learn(this, options, progress, cancellationToken)
        : LearnInParts().Whole(options, progress, cancellationToken);

    /// <summary>Prepares the study so that parts of the cases run anywhere. See <see cref="Learn"/>.</summary>
    /// <returns>The study; its answer is what is believed after.</returns>
    /// <exception cref="InvalidModelException"><see cref="Check"/> reports errors, or <see cref="Runs"/> are fewer than
    /// the cases (STU022): which cases are run follows from the first ones.</exception>
    public PartitionedStudy<Posterior<T>> LearnInParts() => ChoosesRuns
        ? throw new InvalidModelException([new ModelFinding(FindingSeverity.Error, "STU022", nameof(Runs), $"A study of {Cases} cases that "
            + $"chooses {Runs} runs from what the first ones give cannot run in parts; leave Runs out, or run it whole.")])
        : LikelihoodRows.Study(this, posterior => posterior);

    /// <summary>
    /// Cases that another study of them has chosen to run; null where this one runs all or chooses its own.
    /// </summary>
    internal CaseShares? Given { get; init; }

    private bool ChoosesRuns => Runs < Cases && !Observations.IsEmpty;
}
