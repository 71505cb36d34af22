using System.Collections.Immutable;
using Staging.Core.Gaps;
using Staging.Core.Sizing;
using Staging.Core.Solving;
using Staging.Core.Studies;
using UnitsNet;

namespace Staging.Core.GroundTests;

/// <summary>What a series of ground tests says of what was not known, and of the next design.</summary>
/// <remarks>
/// It informs and permits nothing: local codes, the range safety officer and licensed practice decide. Plan for a stage
/// that does not light.
/// </remarks>
public sealed class Learned
{
    private readonly SeriesStudy study;

    private readonly double[] logSilence;

    internal Learned(GroundTestSeries series, Posterior<EquatableArray<double>> posterior, SeriesStudy study)
        : this(series, posterior, study, [.. study.LogSilence])
    {
    }

    private Learned(GroundTestSeries series, Posterior<EquatableArray<double>> posterior, SeriesStudy study, double[] logSilence)
    {
        (Series, Posterior, this.study, this.logSilence) = (series, posterior, study, logSilence);
        Explained = [.. logSilence.Select((s, j) => Math.Clamp(posterior.MeanOver(j, l => 1 - Math.Exp(s - l)), 0, 1))];
        Findings = [.. series.Check(), .. posterior.Findings, .. LearnedFindings.Of(series, posterior, logSilence, Explained)];
    }

    /// <summary>The tests.</summary>
    public GroundTestSeries Series { get; }

    /// <summary>
    /// Everything else: each unknown input before and after, what each test taught, weights, effective number of cases.
    /// A case is the values of the unknowns, in their order, each in its [Unit]. Refused are also the cases in which
    /// the gap of a test is not solved.
    /// </summary>
    public Posterior<EquatableArray<double>> Posterior { get; }

    /// <summary>
    /// For each test, how probable it is after all of them that the model is right about it [-]; low where the test
    /// surprises, 0 where the model calls it impossible.
    /// </summary>
    public ImmutableArray<double> Explained { get; }

    /// <summary>
    /// What there is to say: tests that the model calls impossible or hardly explains, by name (TST010, TST011); too
    /// few cases; unknowns that the tests cannot tell apart.
    /// </summary>
    public ImmutableArray<ModelFinding> Findings { get; }

    /// <summary>Adds further tests; those that are known already are not run again.</summary>
    /// <param name="more">Tests with other names. Their discrepancy counts for them alone, their unknowns are not
    /// used.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <returns>What is believed after all tests, as if they had been given at once; with fewer runs than cases on the
    /// cases that the first tests chose, so that all at once leave a greater effective number.</returns>
    /// <exception cref="InvalidModelException">As of <see cref="GroundTestSeries.Learn"/>.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public Learned And(GroundTestSeries more, StudyOptions? options = null, IProgress<StudyProgress>? progress = null,
        CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(more);
        GroundTestSeries all = Series with { Tests = [.. Series.Tests, .. more.Tests] };
        InvalidModelException.ThrowOnError(all.Check());
        var added = new SeriesStudy(more, study.Unknown, study.Answers);
        Posterior<EquatableArray<double>> both = Posterior.And(
            added.Study(Posterior.Cases, Posterior.Seed), options, progress, cancellationToken);
        return new Learned(all, both, study, [.. logSilence, .. added.LogSilence]);
    }

    /// <summary>The odds that a gap lights the upper motor before its joint opens, before the tests and
    /// after.</summary>
    /// <remarks>
    /// They are odds of the model over what is not known, as <c>StagingPlan.Odds</c> gives them. A test may still end
    /// otherwise, at the chance of <see cref="ModelDiscrepancy.WrongOutcome"/>.
    /// </remarks>
    /// <param name="next">The gap.</param>
    /// <param name="runs">Gap runs at most, about, 10 or more; null, the default, runs every case once.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <returns>The odds; a case whose gap is refused or not solved counts against them.</returns>
    /// <exception cref="InvalidModelException">The gap refuses what an unknown can be.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public LearnedOdds Odds(GapProblem next, int? runs = null, GapModel? model = null, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(next);
        RunnableGap gap = study.Runnable(next, model ?? new GapModel.TwoZone(), SolverOptions.ForStudies);
        return Posterior.Odds((values, stop) => gap.Lights(values, stop), runs, options, progress, cancellationToken);
    }

    /// <summary>The same over the vent area: the vent window, before the tests and after.</summary>
    /// <param name="next">The gap; its vents are replaced.</param>
    /// <param name="layout">How the area is drilled.</param>
    /// <param name="areas">Total vent areas, in mm2.</param>
    /// <param name="runs">Gap runs at most for each area, about, 10 or more; null runs every case.</param>
    /// <param name="model">How the gas is modelled; null for the two-zone model.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress, in order, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <returns>The odds at each area.</returns>
    /// <exception cref="ArgumentException">The axis is not in mm2.</exception>
    /// <exception cref="InvalidModelException">An area cannot be drilled, or the gap refuses what an unknown can
    /// be.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public SweepLine<LearnedOdds> VentOdds(GapProblem next, VentLayout layout, Axis areas, int? runs = null, GapModel? model = null,
        StudyOptions? options = null, IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(next);
        ArgumentNullException.ThrowIfNull(layout);
        Dictionary<double, RunnableGap> gaps = GapWindows.In(areas, "mm2").Values.ToDictionary(mm2 => mm2, mm2 => study.Runnable(
            next.WithVents(layout, Area.FromSquareMillimeters(mm2)), model ?? new GapModel.TwoZone(), SolverOptions.ForStudies));
        return Posterior.OddsAlong(areas, (values, mm2, stop) => gaps[mm2].Lights(values, stop), runs, options, progress,
            cancellationToken);
    }

    /// <summary>Which of some tests would teach most, as expected now.</summary>
    /// <param name="candidates">Tests that could be made: what was seen of them is not used.</param>
    /// <param name="runs">Gap runs at most for each, about, 10 or more; null runs every case that has weight.</param>
    /// <param name="options">Threads; null for all cores.</param>
    /// <param name="progress">Receives progress of each test in turn, on this thread; null for no reports.</param>
    /// <param name="cancellationToken">Stops it.</param>
    /// <returns>The tests, the most informative first.</returns>
    /// <exception cref="InvalidModelException">A candidate is in error, or there is none.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public TestRanking MostInformative(EquatableArray<GroundTest> candidates, int? runs = null, StudyOptions? options = null,
        IProgress<StudyProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var series = new GroundTestSeries { Tests = candidates };
        InvalidModelException.ThrowOnError(candidates.IsEmpty
            ? [new ModelFinding(FindingSeverity.Error, "TST007", nameof(candidates), "There is no candidate; give at least one test.")]
            : series.Check());
        return new TestRanking([.. candidates.Select(test =>
        {
            RunnableGap gap = study.Runnable(test.Gap, test.Model, test.Solver);
            return Posterior.Information(test.Name,
                (values, stop) => TestLikelihood.Classes(gap.At(values, stop).Ending, Series.Discrepancy, test.Doubt), runs, options,
                progress, cancellationToken);
        }).OrderByDescending(i => i.Bits)]);
    }

    /// <summary>
    /// A gap as believed now, for any other study: its one input is the number of a case, drawn by the weights, so that
    /// what the unknowns have to do with one another is kept.
    /// </summary>
    /// <param name="next">The gap.</param>
    /// <param name="count">Cases of equal weight, 2 to 100 000.</param>
    /// <returns>The set.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    /// <exception cref="InvalidModelException">The gap refuses what an unknown can be.</exception>
    public InputSet<GapProblem> Inputs(GapProblem next, int count)
    {
        ArgumentNullException.ThrowIfNull(next);
        Func<EquatableArray<double>, GapProblem> with = study.Unknown.In(next);
        StudyInput<EquatableArray<double>> drawn = Posterior.Resampled(count).Inputs[0];
        return new InputSet<GapProblem>(next,
            new StudyInput<GapProblem>(drawn.Path, drawn.Unit, drawn.Spread, (_, i) => with(drawn.With([], i))));
    }

    /// <summary>
    /// Effective number of cases, each unknown before and after, each test with how well it is explained, and the
    /// findings.
    /// </summary>
    /// <returns>The text.</returns>
    public override string ToString() => LearnedText.Of(this);
}
