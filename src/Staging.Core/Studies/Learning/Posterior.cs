using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>What is believed of the inputs after the observations: the cases with their weights.</summary>
/// <typeparam name="T">The model.</typeparam>
/// <remarks>
/// Immutable; may be read from any thread. Everything in it holds if the prior and the likelihoods hold: a model that
/// is wrong in a way that its likelihoods do not allow for gives ranges that are too narrow. Look at the effective
/// number of cases first: with few of them all numbers are rough.
/// </remarks>
public sealed class Posterior<T>
{
    private readonly LearningStudy<T> study;
    private readonly WeighedCases cases;
    private readonly PosteriorWeights weights;
    private readonly ImmutableArray<WeightedInput> inputs;

    internal Posterior(LearningStudy<T> study, WeighedCases cases)
    {
        (this.study, this.cases) = (study, cases);
        weights = PosteriorWeights.Of(study, cases);
        inputs = [.. Enumerable.Range(0, study.Inputs.Inputs.Length).Select(d => new WeightedInput(cases.Design, d))];
        Inputs = [.. study.Inputs.Inputs.Select((input, d) => PosteriorParts.Input(input.Spread, new ColumnName(input.Path, input.Unit),
            inputs[d], weights.Prior, After))];
        Observations = [.. study.Observations.Select((name, j) => PosteriorParts.Observation(name, j, cases, weights))];
        Correlation = PosteriorParts.Correlation(inputs, After.Weights);
        Findings = [.. PosteriorFindings.All(Inputs, Correlation, After, cases)];
    }

    /// <summary>Cases in all.</summary>
    public int Cases => cases.Count;

    /// <summary>Cases that were run; see <see cref="LearningStudy{T}.Runs"/>.</summary>
    public int Runs => cases.Shares.Runs;

    /// <summary>Cases that the model refused: they have no weight, before or After.</summary>
    public int Refused => cases.Refused;

    /// <summary>
    /// The number of cases of equal weight that would be worth as much [-]: (sum w)^2 / sum w^2 (L. Kish, 1965).
    /// </summary>
    public double EffectiveSampleSize => After.EffectiveSampleSize;

    /// <summary>
    /// The power to which all likelihoods were raised [-], 1 where nothing had to be: below 1 the observations count
    /// for less than they say, and the ranges are wider.
    /// </summary>
    public double Exponent => After.Exponent;

    /// <summary>
    /// Logarithm of the mean likelihood of all observations before they were made [-], raised to
    /// <see cref="Exponent"/>: where that is 1, to compare two models by.
    /// </summary>
    public double LogEvidence => After.LogSum - weights.LogSumBefore;

    /// <summary>How much was learned of all inputs together [bit].</summary>
    public double Bits => PosteriorParts.Bits(cases.Together(), After, weights.LogSumBefore);

    /// <summary>Each input before and after, in their order.</summary>
    public ImmutableArray<LearnedInput> Inputs { get; }

    /// <summary>What each observation taught, in their order.</summary>
    public ImmutableArray<LearnedObservation> Observations { get; }

    /// <summary>
    /// Rank correlation of the inputs after the observations, row by row [-]; they are independent before. Where it is
    /// far from 0, the observations know a combination of two inputs better than either.
    /// </summary>
    public ImmutableArray<double> Correlation { get; }

    /// <summary>
    /// Likelihoods that had to be raised to a power, cases that were refused, and inputs that cannot be told apart.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Weights of the cases [-], in their order; their sum is 1.</summary>
    public ReadOnlyMemory<double> Weights => After.Weights;

    /// <summary>The values of an input in the cases, to be drawn with and without their weights.</summary>
    /// <param name="input">Name of the input.</param>
    /// <returns>A value for each case [Unit].</returns>
    /// <exception cref="ArgumentException">There is no such input.</exception>
    public ReadOnlyMemory<double> Values(string input)
    {
        int d = Index(input);
        Distribution spread = study.Inputs.Inputs[d].Spread;
        return Enumerable.Range(0, Cases).Select(i => spread.At(inputs[d][i])).ToArray();
    }

    /// <summary>The value of an input below which it lies with a probability, after the observations.</summary>
    /// <param name="input">Name of the input.</param>
    /// <param name="probability">The probability [-], above 0 and below 1.</param>
    /// <returns>The value [Unit].</returns>
    /// <exception cref="ArgumentException">There is no such input, or the probability is outside its range.</exception>
    public double Quantile(string input, double probability)
    {
        int d = Index(input);
        Guard.In(probability, double.Epsilon, 1 - 1.0 / (1UL << 53), "-", nameof(probability));
        return study.Inputs.Inputs[d].Spread.At(inputs[d].Quantile(After.Weights, probability));
    }

    /// <summary>The same cases after the observations of another study of them as well; nothing is run again.</summary>
    /// <param name="other">What another study of the same inputs, cases and seed gave, of other observations.</param>
    /// <returns>What is believed after both: the order does not matter.</returns>
    /// <exception cref="ArgumentException">The studies differ in inputs, cases or seed.</exception>
    /// <exception cref="InvalidModelException">An observation is in both, or no case fits all.</exception>
    public Posterior<T> And(Posterior<T> other) => And(Guard.NotNull(other, nameof(other)).study, () => other.cases);

    /// <summary>The probability of something in the model, before and after the observations.</summary>
    /// <param name="probability">Its probability in one case [-], 0 to 1: of something that happens or not, 1 or 0.
    /// Pure, and called on any thread. An <see cref="ArgumentException"/> counts as 0.</param>
    /// <param name="runs">Model runs at most, about, 10 or more; null, the default, runs every case once.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>Both probabilities with what the sampling leaves open.</returns>
    /// <exception cref="ArithmeticException">A probability is not from 0 to 1.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public LearnedOdds Odds(Func<T, CancellationToken, double> probability, int? runs = null, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(probability);
        return OddsAt([0], (model, _, stop) => probability(model, stop), runs, options, progress, cancellationToken)[0];
    }

    /// <summary>The same along an axis: for example of a gap against its vent area.</summary>
    /// <param name="axis">The values.</param>
    /// <param name="probability">The probability at a value of the axis in one case [-], 0 to 1; pure.</param>
    /// <param name="runs">Model runs at most at each value, about, 10 or more; null runs every case.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>The odds at each value.</returns>
    /// <exception cref="ArithmeticException">A probability is not from 0 to 1.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SweepLine<LearnedOdds> OddsAlong(Axis axis, Func<T, double, CancellationToken, double> probability, int? runs = null,
        StudyOptions? options = null, IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(axis);
        ArgumentNullException.ThrowIfNull(probability);
        return new SweepLine<LearnedOdds>(axis, OddsAt(axis.Values, probability, runs, options, progress, cancellationToken));
    }

    /// <summary>How much an observation that has not been made would teach, as expected now.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="classes">The probability of each class of its outcome in one case [-], summing to 1: with the
    /// chance that the model is wrong in it. Pure, and called on any thread.</param>
    /// <param name="runs">Model runs at most, about, 10 or more; null, the default, runs every case that has
    /// weight.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the runs.</param>
    /// <returns>The information, and how probable each class is.</returns>
    /// <exception cref="ArgumentException">The name is blank or holds control characters.</exception>
    /// <exception cref="ArithmeticException">The probabilities do not sum to 1, or their number differs from case to
    /// case.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public ExpectedInformation Information(string name, Func<T, CancellationToken, ImmutableArray<double>> classes, int? runs = null,
        StudyOptions? options = null, IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        Guard.NotBlank(name, nameof(name));
        ArgumentNullException.ThrowIfNull(classes);
        var picked = PickedCases.Of(cases.Shares, weights.Before, After, runs, afterAlone: true);
        ImmutableArray<ImmutableArray<double>> found = PointEvaluator.All(
            picked.Cases.Length, (i, stop) => PickedCases.Classes(classes(At(picked.Cases[(int)i]), stop)), options, progress,
            cancellationToken);
        return found.Any(p => p.Length != found[0].Length)
            ? throw new ArithmeticException("The number of classes differs from case to case.")
            : ExpectedInformation.Of(name, found, picked.After);
    }

    /// <summary>
    /// The model as believed now, for any other study: its one input is the number of a case, drawn by the weights, and
    /// sets all inputs of that case, so that what they have to do with one another is kept.
    /// </summary>
    /// <param name="count">Cases of equal weight, 2 to 100 000; one that weighs much stands for several.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public InputSet<T> Resampled(int count)
    {
        Guard.In(count, 2, 100_000, nameof(count));
        ImmutableArray<(double, double)> drawn =
            [.. After.Resampled(count).GroupBy(i => i).Select(g => ((double)g.Key, (double)g.Count()))];
        return new InputSet<T>(study.Inputs.Nominal,
            new StudyInput<T>("posterior.case", "-", Distribution.Discrete(drawn), (_, i) => At((int)i)));
    }

    /// <summary>
    /// Effective number of cases, each input before and after, what each observation taught, and the findings.
    /// </summary>
    /// <returns>The text.</returns>
    public override string ToString() => PosteriorText.Of(this);

    /// <summary>Which cases were run, and how many each stands for.</summary>
    internal CaseShares Shares => cases.Shares;

    private CaseWeights After => weights.After;

    /// <summary>The seed of the cases.</summary>
    internal ulong Seed => study.Seed;

    /// <summary>The mean of a function of the log-likelihood of an observation [-].</summary>
    internal double MeanOver(int observation, Func<double, double> value) => After.Mean(i => value(cases.Of(observation)[i]));

    /// <summary>The same cases after further observations, which are made on those that were run.</summary>
    internal Posterior<T> And(LearningStudy<T> more, StudyOptions? options, IProgress<StudyProgress>? progress, CancellationToken cancel) =>
        And(more, () => ChosenRuns.Run(more, cases.Shares, options, progress, cancel));

    /// <summary>The model with the values of a case.</summary>
    internal T At(int i) => study.Inputs.At(study.Inputs.Values(cases.Design, i));

    private Posterior<T> And(LearningStudy<T> second, Func<WeighedCases> other)
    {
        if (study.Cases != second.Cases || study.Seed != second.Seed || !ColumnName.Same(study.Inputs.Names, second.Inputs.Names)
            || !study.Inputs.Spreads.SequenceEqual(second.Inputs.Spreads))
            throw new ArgumentException("The two studies do not have the same inputs, cases and seed.", nameof(other));
        LearningStudy<T> both = study with
        {
            Observations = [.. study.Observations, .. second.Observations],
            LogLikelihoods = (model, stop) => [.. study.LogLikelihoods(model, stop), .. second.LogLikelihoods(model, stop)],
        };
        InvalidModelException.ThrowOnError(both.Check());
        WeighedCases added = other();
        if (!cases.Shares.Agrees(added.Shares))
            throw new ArgumentException("The two studies chose different cases to run; give all observations at once.", nameof(other));
        return new Posterior<T>(both, cases.And(added));
    }

    private ImmutableArray<LearnedOdds> OddsAt(EquatableArray<double> values, Func<T, double, CancellationToken, double> probability,
        int? runs, StudyOptions? options, IProgress<StudyProgress>? progress, CancellationToken cancel)
    {
        var picked = PickedCases.Of(cases.Shares, weights.Before, After, runs, afterAlone: false);
        int n = picked.Cases.Length;
        ImmutableArray<double> found = PointEvaluator.All((long)n * values.Length,
            (k, stop) => PickedCases.Share(() => probability(At(picked.Cases[(int)(k % n)]), values[(int)(k / n)], stop)), options,
            progress, cancel);
        return [.. values.Select((_, v) => picked.Odds(found.AsSpan().Slice(v * n, n)))];
    }

    private int Index(string input)
    {
        string[] names = [.. study.Inputs.Inputs.Select(i => i.Path)];
        int d = Array.IndexOf(names, input);
        return d >= 0
            ? d
            : throw new ArgumentException(
                $"There is no input \"{Excerpt.Of(input)}\"; there are {string.Join(", ", names)}.", nameof(input));
    }
}
