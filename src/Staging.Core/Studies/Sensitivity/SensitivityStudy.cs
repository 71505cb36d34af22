using System.Collections.Immutable;

namespace Staging.Core.Studies;

/// <summary>
/// A study of which uncertain inputs of a model matter for a number computed from it. It does not say by which
/// method.
/// </summary>
/// <typeparam name="T">The model that is varied.</typeparam>
/// <remarks>
/// Immutable. The function must be pure: it is called on any thread. An exception of the model ends the study.
/// Equality of two studies compares their functions by reference.
/// </remarks>
public sealed record SensitivityStudy<T>
{
    /// <summary>The model and what is uncertain in it.</summary>
    public required InputSet<T> Inputs { get; init => field = Guard.NotNull(value); }

    /// <summary>Unit of the number; <c>-</c> where there is none.</summary>
    public required string Unit { get; init => field = Guard.NotBlank(value); }

    /// <summary>Runs one case and gives the number, in [Unit]: a time, a margin, or 1 and 0 for lit and dark.</summary>
    public required Func<T, CancellationToken, double> Model { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Screens the inputs by elementary effects (M. D. Morris, Technometrics 33 (1991) 161-174): which matter, and
    /// which interact or are not linear. An input without ends runs from its 1 % to its 99 % quantile.
    /// </summary>
    /// <param name="paths">Paths, 2 to 100 000; each costs one run more than there are inputs.</param>
    /// <param name="levels">Levels of the grid in the quantiles, 4 to 100, an even number.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>One effect for each input, in their order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="ArithmeticException">The model gave a number that is not finite.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public ImmutableArray<MorrisEffect> Screen(int paths, int levels = 8, ulong seed = 0, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default) =>
        ScreenInParts(paths, levels, seed).Whole(options, progress, cancellationToken);

    /// <summary>Prepares a screening that can be run in parts: a case is a path. See <see cref="Screen"/>.</summary>
    /// <param name="paths">Paths, 2 to 100 000; each costs one run more than there are inputs.</param>
    /// <param name="levels">Levels of the grid in the quantiles, 4 to 100, an even number.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>The study; its answer is one effect for each input, in their order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public PartitionedStudy<ImmutableArray<MorrisEffect>> ScreenInParts(int paths, int levels = 8, ulong seed = 0) =>
        Morris.Study(this, paths, levels, seed);

    /// <summary>
    /// First- and total-order indices with their confidence (I. M. Sobol, Math. Comput. Simul. 55 (2001) 271-280;
    /// estimators of A. Saltelli et al., Comput. Phys. Commun. 181 (2010) 259-270). Costs
    /// <c>repetitions rows (inputs + 2)</c> runs.
    /// </summary>
    /// <param name="rows">Rows of each matrix, 2 to 1 million; powers of two are best.</param>
    /// <param name="repetitions">Independent repetitions, 2 to 1000.</param>
    /// <param name="confidence">Confidence of the intervals [-], 0.5 to 0.999999.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>One index for each input, in their order; at most 20 inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or there are more than 20
    /// inputs.</exception>
    /// <exception cref="InvalidModelException">More numbers than one machine keeps (STU016).</exception>
    /// <exception cref="InvalidOperationException">The result is the same everywhere: there is no variance to share
    /// out.</exception>
    /// <exception cref="ArithmeticException">The model gave a number that is not finite.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public ImmutableArray<SobolIndex> VarianceShares(int rows, int repetitions = 16, double confidence = 0.95, ulong seed = 0,
        StudyOptions? options = null, IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default) =>
        VarianceSharesInParts(rows, repetitions, confidence, seed).Whole(options, progress, cancellationToken);

    /// <summary>
    /// Prepares first- and total-order indices that can be computed in parts: a case is a row of both matrices. See
    /// <see cref="VarianceShares"/>.
    /// </summary>
    /// <param name="rows">Rows of each matrix, 2 to 1 million; powers of two are best.</param>
    /// <param name="repetitions">Independent repetitions, 2 to 1000.</param>
    /// <param name="confidence">Confidence of the intervals [-], 0.5 to 0.999999; parts do not depend on it.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>
    /// The study; its answer is one index for each input, in their order. A result that is the same everywhere has no
    /// answer: <see cref="InvalidOperationException"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or there are more than 20
    /// inputs.</exception>
    public PartitionedStudy<ImmutableArray<SobolIndex>> VarianceSharesInParts(
        int rows, int repetitions = 16, double confidence = 0.95, ulong seed = 0) =>
        SobolIndices.Study(this, rows, repetitions, confidence, seed);

    /// <summary>Runs the inputs one at a time, the others at their medians: the bars of a tornado diagram.</summary>
    /// <param name="tail">Share of the values beyond each end [-], 0.001 to 0.4: 0.05 runs each input from its 5 % to
    /// its 95 %.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops the study.</param>
    /// <returns>One bar for each input, the longest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tail is outside its range.</exception>
    /// <exception cref="ArithmeticException">The model gave a number that is not finite.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public ImmutableArray<TornadoBar> Bars(double tail = 0.05, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default) =>
        BarsInParts(tail).Whole(options, progress, cancellationToken);

    /// <summary>Prepares a tornado that can be run in parts: a case is a run. See <see cref="Bars"/>.</summary>
    /// <param name="tail">Share of the values beyond each end [-], 0.001 to 0.4: 0.05 runs each input from its 5 % to
    /// its 95 %.</param>
    /// <returns>The study; its answer is one bar for each input, the longest first.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The tail is outside its range.</exception>
    public PartitionedStudy<ImmutableArray<TornadoBar>> BarsInParts(double tail = 0.05) => Tornado.Study(this, tail);

    /// <summary>The heading that identifies a study of this kind; each case gives numbers in [Unit].</summary>
    internal StudyHeading Heading(long cases, ulong seed, string design, IEnumerable<string> numbers) => new(
        cases, seed, design, Inputs.Names, Inputs.Spreads, [.. numbers.Select(name => new ColumnName(name, Unit))]);

    /// <summary>The number at given values of the inputs.</summary>
    internal double At(ReadOnlySpan<double> values, CancellationToken cancel)
    {
        double result = Model(Inputs.At(values), cancel);
        return double.IsFinite(result)
            ? result
            : throw new ArithmeticException(
                $"The model gave no finite number at {string.Join(", ", values.ToArray().Select(AcceptedRange.Text))}.");
    }

    /// <summary>
    /// The values of the inputs at a point of the unit cube; where a distribution has no ends, 0 and 1 are its 1 % and
    /// 99 % quantiles.
    /// </summary>
    internal double[] Values(ReadOnlySpan<double> unit)
    {
        const double nearest = Philox4x32.Nearest, tail = 0.01;
        double[] values = new double[unit.Length];
        for (int d = 0; d < values.Length; d++)
        {
            Distribution spread = Inputs.Inputs[d].Spread;
            values[d] = spread.At(spread.IsBounded ? Math.Clamp(unit[d], nearest, 1 - nearest) : tail + (1 - 2 * tail) * unit[d]);
        }

        return values;
    }
}
